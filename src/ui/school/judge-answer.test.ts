import { describe, expect, test } from 'vitest';
import type { Division, Gravity } from '../../domain/gravity';
import { judgeAnswer } from './judge-answer';
import type { Eye, Look, Round } from './round';

const round = (truth: number, more: Partial<Round> = {}): Round => ({
  division: 10,
  truth: truth as Gravity,
  eye: 'level',
  ...more,
});
const level: Look = { eye: 'level', freed: false };
const mistakeIn = (asked: Round, given: string, look: Look = level) => {
  const answer = judgeAnswer(asked, look, given);
  return answer.verdict === 'wrong' ? answer.mistake : answer.verdict;
};

describe('a reading of 0.994', () => {
  test.each(['0.994', '0,994', '994', ' .994 ', '0.9940', '994.5'])('is right as %s', (given) =>
    expect(judgeAnswer(round(9940), level, given).verdict).toBe('right'),
  );

  test.each([
    ['0.992', 'rim'],
    ['0.993', 'one line'],
    ['0.995', 'one line'],
    ['0.996', 'wrong way'],
    ['0.986', 'wrong way'],
    ['1.020', 'far'],
  ])('as %s is %s', (given, mistake) => expect(mistakeIn(round(9940), given)).toBe(mistake));

  test.each(['9.94', '99.4', '0.0994', '9940'])('as %s has its point in the wrong place', (given) =>
    expect(mistakeIn(round(9940), given)).toBe('decimal'),
  );
});

test.each(['1.54', '10.54', '1.0054', '1.504'])(
  '1.054 read as %s is a slip of the point or of a nought',
  (given) => expect(mistakeIn(round(10_540), given)).toBe('decimal'),
);

test('what is no reading at all is asked again, in the sentence of the field', () =>
  expect(judgeAnswer(round(9940), level, 'about one')).toMatchObject({
    verdict: 'unreadable',
    problem: { code: 'gravity-misread', given: 'about one' },
  }));

describe.each<Division>([10, 20])('on a scale with lines of %d ten-thousandths', (division) => {
  const lines = (count: number) => ((10_400 + count * division) / 10_000).toFixed(4);
  const asked = (more: Partial<Round> = {}) => round(10_400, { division, ...more });

  test('bubbles that still cling are the mistake', () => {
    const held = { by: 'bubbles', off: 4 * division } as const;
    expect(mistakeIn(asked({ held }), lines(4))).toBe('bubbles');
    expect(mistakeIn(asked({ held }), lines(4), { eye: 'level', freed: true })).toBe('far');
    expect(mistakeIn(asked({ held }), lines(0))).toBe('right');
  });

  test.each([4, -4])('a wall that holds it %d lines off is the mistake', (off) =>
    expect(mistakeIn(asked({ held: { by: 'wall', off: off * division } }), lines(off))).toBe('wall'),
  );

  test.each<[Eye, 1 | -1]>([
    ['above', 1],
    ['below', -1],
  ])('the near edge, seen from %s, is the mistake; the flat is right from there too', (eye, sign) => {
    const off = division === 10 ? 30 : 50;
    const look = { eye, freed: false };
    expect(mistakeIn(asked(), ((10_400 + sign * off) / 10_000).toFixed(4), look)).toBe(eye);
    expect(mistakeIn(asked(), '1.040', look)).toBe('right');
  });

  test('the rim is not mistaken for a miscounted line', () => {
    const rim = division === 10 ? '1.038' : '1.037';
    expect(mistakeIn(asked(), rim)).toBe('rim');
    expect(mistakeIn(asked(), lines(-1))).toBe('one line');
  });
});
