import { everyWayThrough } from '../explore/every-way-through';

const GATES_AND_SEALS = [
  'proving dry',
  'stabilise',
  'proving gas-free',
  'fine',
  'bottle',
  'finished',
] as const;
const SAMPLING = { followed: 500, compared: 2000 };
const NOTHING = { corrections: 0, liberties: 0, mishaps: 0 };

everyWayThrough(
  'with one liberty and one way back',
  ['ferment', 'finished'],
  { ...NOTHING, liberties: 1, returns: 1, readings: 'every clause' },
  SAMPLING,
  GATES_AND_SEALS,
);

everyWayThrough(
  'with two readings struck, each dry or not',
  ['ferment', 'finished'],
  { ...NOTHING, corrections: 2, returns: 0, readings: 'dry or not' },
  SAMPLING,
  GATES_AND_SEALS,
);

everyWayThrough(
  'with every reading and two ways back',
  ['ferment', 'finished'],
  { ...NOTHING, returns: 2, readings: 'every reading' },
  SAMPLING,
  GATES_AND_SEALS,
);

everyWayThrough(
  'with one reading struck of any kind, and one way back',
  ['ferment', 'finished'],
  { ...NOTHING, corrections: 1, returns: 1, readings: 'every clause' },
  SAMPLING,
  GATES_AND_SEALS,
);
