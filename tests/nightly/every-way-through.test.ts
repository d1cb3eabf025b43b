import { everyWayThrough } from '../explore/every-way-through';

const GATES_AND_SEALS = [
  'proving dry',
  'stabilise',
  'proving gas-free',
  'fine',
  'bottle',
  'finished',
] as const;
const SAMPLING = { followed: 500, compared: 200 };

everyWayThrough(
  'with one way back',
  ['ferment', 'finished'],
  { corrections: 0, liberties: 0, returns: 1, thorough: false },
  SAMPLING,
  GATES_AND_SEALS,
);

everyWayThrough(
  'with one correction and one way back',
  ['ferment', 'finished'],
  { corrections: 1, liberties: 0, returns: 1, thorough: false },
  SAMPLING,
  GATES_AND_SEALS,
);

everyWayThrough(
  'with one liberty and one way back',
  ['ferment', 'finished'],
  { corrections: 0, liberties: 1, returns: 1, thorough: false },
  SAMPLING,
  GATES_AND_SEALS,
);

everyWayThrough(
  'with every reading and two ways back',
  ['ferment', 'finished'],
  { corrections: 0, liberties: 0, returns: 2, thorough: true },
  SAMPLING,
  GATES_AND_SEALS,
);
