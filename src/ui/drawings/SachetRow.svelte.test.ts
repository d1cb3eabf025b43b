import { render, screen } from '@testing-library/svelte';
import { expect, test } from 'vitest';
import SachetRow from './SachetRow.svelte';

test('sachets lie in their order, four to a row, and the yeast below a line of its own', () => {
  const sachets = [1, 2, 3, 4, 5, 6].map((nth) => ({ nth, ticked: nth < 3, apart: nth === 2 }));
  render(SachetRow, { sachets, label: '5 in a row, the yeast apart' });
  const drawn = [...screen.getByRole('img').querySelectorAll('g')].map((sachet) => {
    const [, x, y] = /translate\(([\d.]+) ([\d.]+)\)/.exec(sachet.getAttribute('transform') ?? '') ?? [];
    return {
      nth: sachet.textContent.trim(),
      x: Number(x),
      y: Number(y),
      ticked: sachet.querySelector('.tick') !== null,
    };
  });
  expect(drawn.map(({ nth }) => nth)).toEqual(['1', '3', '4', '5', '6', '2']);
  const [first, third, , fifth, sixth, yeast] = drawn as [(typeof drawn)[number], ...typeof drawn];
  expect(third!.x).toBeGreaterThan(first.x);
  expect(fifth!.y).toBe(first.y);
  expect(sixth!.y).toBeGreaterThan(first.y);
  expect(yeast!.y).toBeGreaterThan(sixth!.y);
  expect(drawn.filter(({ ticked }) => ticked).map(({ nth }) => nth)).toEqual(['1', '2']);
});
