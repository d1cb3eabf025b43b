import { render, screen } from '@testing-library/svelte';
import { expect, test } from 'vitest';
import SachetRow from './SachetRow.svelte';

/** The sachets as they are drawn, of which some are kept apart, and the first two are ticked. */
function drawnOf(count: number, ...apart: number[]) {
  const sachets = Array.from({ length: count }, (_, at) => at + 1).map((nth) => ({
    nth,
    ticked: nth < 3,
    apart: apart.includes(nth),
  }));
  render(SachetRow, { sachets, label: 'in a row, the yeast apart' });
  return [...screen.getByRole('img').querySelectorAll('g')].map((sachet) => {
    const [, x, y] = /translate\(([\d.]+) ([\d.]+)\)/.exec(sachet.getAttribute('transform') ?? '') ?? [];
    return {
      nth: Number(sachet.textContent),
      x: Number(x),
      y: Number(y),
      ticked: sachet.querySelector('.tick') !== null,
    };
  });
}

test('sachets lie in their order, five in a row, and the yeast below a line of its own', () => {
  const drawn = drawnOf(6, 2);
  expect(drawn.map(({ nth }) => nth)).toEqual([1, 3, 4, 5, 6, 2]);
  const row = drawn.slice(0, 5);
  expect(new Set(row.map(({ y }) => y)).size).toBe(1);
  expect(row.map(({ x }) => x)).toEqual(row.map(({ x }) => x).toSorted((one, other) => one - other));
  expect(drawn[5]!.y).toBeGreaterThan(drawn[0]!.y);
  expect(drawn.filter(({ ticked }) => ticked).map(({ nth }) => nth)).toEqual([1, 2]);
});

test('rows are even: six lie three and three', () => {
  const drawn = drawnOf(6);
  expect(drawn.map(({ x }) => x === drawn[0]!.x)).toEqual([true, false, false, true, false, false]);
  expect(drawn[3]!.y).toBeGreaterThan(drawn[2]!.y);
});
