import { describe, expect, test } from 'vitest';
import { answersTold, codesOf, momentAt } from '../../../tests/story/told';
import { gasGone } from './gas-gone';

type Said = ReturnType<typeof codesOf>;

describe('the gas is gone', () => {
  test.each<[story: string, livelier: boolean[], said: Said]>([
    ['not untested', [], ['gas-not-tested']],
    ['not after one test', [false], ['gas-not-tested']],
    ['after two', [false, false], 'open'],
    ['not when the last was livelier than water', [false, false, true], ['gassy', 'gas-not-tested']],
    ['not on one pass after that', [true, false], ['gas-not-tested']],
    ['on two passes after that', [true, false, false], 'open'],
  ])('%s', (_, answers, said) =>
    expect(codesOf(gasGone(answersTold('gas', answers), momentAt(0).at))).toEqual(said),
  );

  test('counting only tests since the last stir', () =>
    expect(codesOf(gasGone(answersTold('gas', [false, false]), momentAt(1).at))).toEqual(['gas-not-tested']));
});
