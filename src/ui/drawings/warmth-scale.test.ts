import { describe, expect, test } from 'vitest';
import type { Celsius } from '../../domain/unit';
import { warmthScale } from './warmth-scale';

const labels = (scale: '°C' | '°F') => warmthScale(scale, 0, 150).lines.flatMap(({ label }) => label ?? []);

describe('a thermometer', () => {
  test('stands higher the warmer it is', () => {
    const { y } = warmthScale('°C', 0, 150);
    expect([5, 20, 35].map((celsius) => y(celsius as Celsius))).toEqual([150, 75, 0]);
  });

  test('is numbered at every fifth degree', () =>
    expect(labels('°C')).toEqual(['5', '10', '15', '20', '25', '30', '35']));

  test('is numbered at every tenth degree of Fahrenheit for who reads those', () =>
    expect(labels('°F')).toEqual(['50', '60', '70', '80', '90']));

  test('shows one warmth at one height, whatever the degrees', () =>
    expect(warmthScale('°F', 0, 150).y(20 as Celsius)).toBeCloseTo(75, 6));

  test('ends at its ends', () => {
    const { y } = warmthScale('°C', 0, 150);
    expect([y(-3 as Celsius), y(60 as Celsius)]).toEqual([150, 0]);
  });
});
