import { describe, expect, test } from 'vitest';
import { volumeMarks } from './volume-marks';

describe('the scale on a vessel', () => {
  test('stands at every five litres, and numbers every second line', () =>
    expect(volumeMarks(30, 'litres')).toEqual([
      { litres: 5 },
      { litres: 10, label: '10' },
      { litres: 15 },
      { litres: 20, label: '20' },
      { litres: 25 },
      { litres: 30, label: '30' },
    ]));

  test('stands at whole gallons for a maker who thinks in gallons', () => {
    const marks = volumeMarks(12, 'US gallons');
    expect(marks.map(({ label }) => label)).toEqual([undefined, '2', undefined]);
    expect(marks[1]?.litres).toBeCloseTo(7.571, 3);
  });

  test('is finer on a jug', () =>
    expect(volumeMarks(2, 'litres').flatMap(({ label }) => label ?? [])).toEqual(['1', '2']));

  test('a jug is marked in tenths of a gallon', () =>
    expect(volumeMarks(2, 'imperial gallons').flatMap(({ label }) => label ?? [])).toEqual(['0.2', '0.4']));
});
