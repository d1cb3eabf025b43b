import { everyWayThrough } from './explore/every-way-through';

everyWayThrough(
  'with one thing gone wrong, and readings that are dry or not',
  ['ferment', 'finished'],
  { corrections: 0, liberties: 0, mishaps: 1, returns: 0, readings: 'dry or not' },
  { followed: 500, compared: 2000 },
  ['pitch', 'proving dry', 'stabilise', 'proving gas-free', 'fine', 'bottle', 'finished'],
);
