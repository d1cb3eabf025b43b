import { describe, expect, test } from 'vitest';
import { codesOf } from '../../../tests/story/told';
import type { Gravity } from '../gravity';
import type { Instrument } from '../reading';
import type { Litres } from '../unit';
import { boxComplete, heldBack, isTight, type Box } from './box-complete';

type Said = ReturnType<typeof codesOf>;

describe('the box is complete', () => {
  const instrument: Instrument = { division: 10, calibratedAt: 20, offset: 0 as Gravity };
  const box: Box = { missing: [], instrument, brim: 30 as Litres, batch: 23 as Litres };
  test.each<[story: string, given: Partial<Box>, said: Said]>([
    ['with everything there', {}, 'open'],
    ['not before it was looked at', { missing: undefined }, ['box-not-checked']],
    ['not with a sachet missing', { missing: ['Wine yeast'] }, ['sachets-missing']],
    ['not without a checked hydrometer', { instrument: undefined }, ['hydrometer-not-checked']],
    ['not in a vessel below 1.08 times the batch', { brim: 24.8 as Litres }, ['vessel-too-small']],
    ['at 1.08 times the batch', { brim: 24.84 as Litres }, 'open'],
  ])('%s', (_, given, said) => expect(codesOf(boxComplete({ ...box, ...given }))).toEqual(said));

  test.each([
    ['nothing at 1.25 times the batch', 28.75, 0],
    ['what makes room for foam in a tighter one', 27.5, 1],
    ['a tenth of the batch at the most', 24.9, 2.3],
  ])('holds back %s', (_, brim, litres) =>
    expect(heldBack(brim as Litres, 23 as Litres)).toBeCloseTo(litres, 9),
  );

  test('calls a vessel tight below 1.25 times the batch', () =>
    expect([28.74, 28.75].map((brim) => isTight(brim as Litres, 23 as Litres))).toEqual([true, false]));
});
