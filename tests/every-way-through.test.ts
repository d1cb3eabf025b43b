import { everyWayThrough } from './explore/every-way-through';

everyWayThrough(
  'with every answer that there is',
  ['prepare', 'ferment'],
  { corrections: 1, liberties: 0, returns: 1, thorough: true },
  { followed: 20, compared: 10 },
  ['mix', 'proving mixed', 'pitch', 'ferment'],
);
