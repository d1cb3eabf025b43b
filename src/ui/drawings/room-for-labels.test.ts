import { expect, test } from 'vitest';
import { roomForLabels } from './room-for-labels';

test('spots far apart all carry a label', () =>
  expect(
    roomForLabels([
      { x: 0, y: 0 },
      { x: 80, y: 0 },
      { x: 80, y: 40 },
    ]),
  ).toEqual([true, true, true]));

test('in a crowd the newest keeps its label', () =>
  expect(
    roomForLabels([
      { x: 0, y: 0 },
      { x: 30, y: 4 },
      { x: 60, y: 8 },
    ]),
  ).toEqual([false, false, true]));

test('no spots want no labels', () => expect(roomForLabels([])).toEqual([]));
