import { everyWayThrough } from './explore/every-way-through';

const GATES_AND_SEALS = [
  'proving dry',
  'stabilise',
  'proving gas-free',
  'fine',
  'bottle',
  'finished',
] as const;

everyWayThrough(
  'with every answer that there is',
  ['prepare', 'ferment'],
  { corrections: 1, liberties: 0, returns: 1, thorough: true },
  { followed: 20, compared: 10 },
  ['mix', 'proving mixed', 'pitch', 'ferment'],
);

everyWayThrough(
  'with one way back',
  ['ferment', 'finished'],
  { corrections: 0, liberties: 0, returns: 1, thorough: false },
  { followed: 200, compared: 50 },
  GATES_AND_SEALS,
);
