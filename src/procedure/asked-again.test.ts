import { expect, test } from 'vitest';
import { at } from '../../tests/story/refused';
import type { Litres } from '../domain/unit';

const how = 'touch' as const;

test('the brim is measured again until the batch fits: a larger vessel takes the place of a smaller', () => {
  const maker = at('prepare');
  while (maker.act?.step !== 'measure brim') maker.answer();
  const seen = [22, 24.8, 24.9].map((litres) => {
    maker.report({ type: 'litres measured', how, act: 'measure brim 1', litres: litres as Litres });
    return maker.act?.step;
  });
  expect(seen).toEqual(['measure brim', 'measure brim', 'choose a place']);
});

test('bottles are counted again until there are enough of them, and no cork for a screw thread', () => {
  const maker = at('bottle');
  const count = (bottles: number, closures: number, threaded: boolean): string | undefined => {
    maker.report({ type: 'bottles counted', how, act: 'count bottles 1', bottles, closures, threaded });
    return maker.act?.step;
  };
  expect([count(12, 34, false), count(32, 12, false), count(32, 34, true), count(32, 34, false)]).toEqual([
    'count bottles',
    'count bottles',
    'count bottles',
    'sanitise bottles',
  ]);
});

test('and no more once the wine is in them', () => {
  const maker = at('bottle');
  while (maker.act?.step !== 'count filled') maker.answer();
  expect(maker.place).toBe('bottle');
});
