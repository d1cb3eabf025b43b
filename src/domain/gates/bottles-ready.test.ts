import { describe, expect, test } from 'vitest';
import { codesOf } from '../../../tests/story/told';
import { bottlesReady, type Bottles } from './bottles-ready';

type Said = ReturnType<typeof codesOf>;

describe('the bottles are ready', () => {
  const bottles: Bottles = {
    counted: { bottles: 30, closures: 30, threaded: false },
    wanted: 30,
    closure: 'cork',
  };
  test.each<[story: string, given: Partial<Bottles>, said: Said]>([
    ['when there are enough of both', {}, 'open'],
    ['not uncounted', { counted: undefined }, ['not-counted']],
    ['not a bottle short', { wanted: 31 }, ['too-few-bottles', 'too-few-closures']],
    [
      'never a cork in a screw thread',
      { counted: { bottles: 40, closures: 40, threaded: true } },
      ['cork-in-screw-thread'],
    ],
    [
      'a cap on a screw thread',
      { counted: { bottles: 40, closures: 40, threaded: true }, closure: 'screw cap' },
      'open',
    ],
  ])('%s', (_, given, said) => expect(codesOf(bottlesReady({ ...bottles, ...given }))).toEqual(said));
});
