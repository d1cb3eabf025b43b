import { everyWayThrough } from './explore/every-way-through';

everyWayThrough(
  'with one reading struck, each dry or not, and one way back',
  ['ferment', 'finished'],
  { corrections: 1, liberties: 0, mishaps: 0, returns: 1, readings: 'dry or not', answers: 'careful' },
  { followed: 1000, compared: 2000 },
  ['proving dry', 'stabilise', 'proving gas-free', 'fine', 'bottle', 'finished'],
);
