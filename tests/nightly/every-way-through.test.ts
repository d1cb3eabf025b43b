import { builtInSheets } from '../../src/procedure/kits';
import { everyWayThrough } from '../explore/every-way-through';
import { hedge } from '../story/refused';

const GATES_AND_SEALS = [
  'proving dry',
  'stabilise',
  'proving gas-free',
  'fine',
  'bottle',
  'finished',
] as const;
const SAMPLING = { followed: 500, compared: 5000 };
const NOTHING = { corrections: 0, liberties: 0, mishaps: 0 };

everyWayThrough(
  'with one liberty and one way back',
  ['ferment', 'finished'],
  { ...NOTHING, liberties: 1, returns: 1, readings: 'every clause', answers: 'any' },
  SAMPLING,
  GATES_AND_SEALS,
);

everyWayThrough(
  'with one thing gone wrong, each reading dry or not, and no way back but those that are called for',
  ['ferment', 'finished'],
  { ...NOTHING, mishaps: 1, returns: 0, readings: 'dry or not', answers: 'careful' },
  SAMPLING,
  GATES_AND_SEALS,
  builtInSheets.filter((sheet) => sheet !== hedge),
);

// Where the sachets are in hand; over a whole batch the pairs are too many for a night.
everyWayThrough(
  'with two things gone wrong, each reading dry or not, and no way back but those that are called for',
  ['stabilise', 'top up'],
  { ...NOTHING, mishaps: 2, returns: 0, readings: 'dry or not', answers: 'careful' },
  SAMPLING,
  ['proving dry', 'stabilise', 'degas', 'proving gas-free', 'fine', 'top up'],
);

everyWayThrough(
  'with two readings struck, each dry or not, and no way back but those that are called for',
  ['ferment', 'finished'],
  { ...NOTHING, corrections: 2, returns: 0, readings: 'dry or not', answers: 'careful' },
  SAMPLING,
  GATES_AND_SEALS,
);

everyWayThrough(
  'with every reading and two ways back',
  ['ferment', 'finished'],
  { ...NOTHING, returns: 2, readings: 'every reading', answers: 'careful' },
  SAMPLING,
  GATES_AND_SEALS,
);

everyWayThrough(
  'with one reading of any kind struck, and no way back but those that are called for',
  ['ferment', 'finished'],
  { ...NOTHING, corrections: 1, returns: 0, readings: 'every clause', answers: 'careful' },
  SAMPLING,
  GATES_AND_SEALS,
);
