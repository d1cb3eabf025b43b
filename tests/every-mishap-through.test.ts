import { everyWayThrough } from './explore/every-way-through';
import { hedge } from './story/refused';

everyWayThrough(
  'with one thing gone wrong, each reading dry or not, and no way back but those that are called for',
  ['ferment', 'finished'],
  { corrections: 0, liberties: 0, mishaps: 1, returns: 0, readings: 'dry or not', answers: 'careful' },
  { followed: 500, compared: 5000 },
  ['pitch', 'proving dry', 'stabilise', 'proving gas-free', 'fine', 'bottle', 'finished'],
  [hedge],
);
