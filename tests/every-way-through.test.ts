import { everyWayThrough } from './explore/every-way-through';

everyWayThrough(
  'with every answer that there is',
  ['prepare', 'ferment'],
  { corrections: 1, liberties: 0, mishaps: 0, returns: 1, readings: 'every reading', answers: 'any' },
  { followed: 20, compared: 100 },
  ['mix', 'proving mixed', 'pitch', 'ferment'],
);

everyWayThrough(
  'with one way back',
  ['ferment', 'finished'],
  { corrections: 0, liberties: 0, mishaps: 0, returns: 1, readings: 'every clause', answers: 'any' },
  { followed: 500, compared: 2000 },
  ['proving dry', 'stabilise', 'proving gas-free', 'fine', 'bottle', 'finished'],
);
