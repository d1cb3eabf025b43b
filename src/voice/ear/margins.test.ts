import { expect, test } from 'vitest';
import { margins } from './margins';
import { readAnswer, type Answer } from './read-answer';

/** A word a line: its first and last hundredth of a second, and how well its sounds fit. */
const answer = (
  frames: number,
  ...lines: readonly [word: string, first: number, last: number, fit: number][]
): Answer => {
  const words = lines.map(([word]) => word).filter((word) => word !== 'SIL');
  const path = lines.map(([word, ...rest]) => [word === 'SIL' ? '<sil>' : word, ...rest, 0].join('\t'));
  const read = readAnswer([`-1\t${String(frames)}\t${words.join(' ')}`, ...path].join('\n'));
  if (!read) throw new Error('An answer with words can be read.');
  return read;
};

test('a margin is the gain in fit, a tenth of a second', () => {
  const heard = answer(100, ['that', 0, 49, -500], ['is', 50, 99, -500]);
  const other = answer(100, ['hat', 0, 99, -2000]);
  expect(margins(heard, other)).toEqual({ margin: 100, inside: 100 });
});

test('within the words of a phrase, the silences about it do not count', () => {
  const heard = answer(200, ['SIL', 0, 49, -50], ['that', 50, 149, -1000], ['SIL', 150, 199, -50]);
  const other = answer(200, ['SIL', 0, 49, -550], ['hat', 50, 149, -1300], ['SIL', 150, 199, -550]);
  const { margin, inside } = margins(heard, other);
  expect(margin).toBeCloseTo(65);
  expect(inside).toBeCloseTo(30);
});

test('is below nought where the other path fits better', () =>
  expect(margins(answer(50, ['done', 0, 49, -900]), answer(50, ['nice', 0, 49, -400])).inside).toBeCloseTo(
    -100,
  ));
