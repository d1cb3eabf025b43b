import { describe, expect, test } from 'vitest';
import { FIRST_PREFERENCES } from '../../domain/preferences';
import type { Consequence } from '../../procedure/consequence';
import { formatsFor } from '../formats';
import { consequence } from './consequence';

const formats = formatsFor({ preferences: FIRST_PREFERENCES, language: 'en', timeZone: 'UTC' });

const sweet: Consequence = {
  sugar: { value: 14.3, low: 9.8, high: 18.8 },
  at20: { value: 4.1, low: 2.6, high: 5.6 },
  at30: { value: 5.7, low: 3.8, high: 7.6 },
  orMore: false,
  meantFor: 0.5,
  wasted: ['Potassium sorbate, stabiliser', 'Metabisulphite'],
};
const beyond: Consequence = { ...sweet, orMore: true };
const nearlyDry: Consequence = {
  ...sweet,
  sugar: { value: 1.2, low: 0, high: 4.9 },
  at20: { value: 0.3, low: -0.1, high: 1.4 },
  at30: { value: 0.6, low: 0.1, high: 1.9 },
  wasted: [],
};
const dry: Consequence = { ...nearlyDry, at20: { value: 0, low: -0.2, high: 0.02 } };

describe('what ignoring a shut gate would mean', () => {
  test.each<[string, Consequence, (string | undefined)[]]>([
    [
      'sweet wine, in its own numbers, give or take',
      sweet,
      [
        'There are about 14 grams of sugar left in each litre, give or take 4.5 grams.',
        'Bottled now, it would ferment on: 3 bar to 6 bar in a bottle at 20 °C, 4 bar to 8 bar at 30 °C.',
        'A bottle for still wine is meant for 0.5 bar at 20 °C; this is more, and glass bursts without warning.',
        'Added now, “Potassium sorbate, stabiliser” and “Metabisulphite” would be wasted: stabiliser does not stop yeast that is at work, and there is no second dose.',
      ],
    ],
    [
      'more sugar than the sum reaches: at least so much',
      beyond,
      [
        'There are about 14 grams of sugar left in each litre, give or take 4.5 grams.',
        'Bottled now, it would ferment on: 3 bar or more in a bottle at 20 °C, 4 bar or more at 30 °C.',
        'A bottle for still wine is meant for 0.5 bar at 20 °C; this is more, and glass bursts without warning.',
        'Added now, “Potassium sorbate, stabiliser” and “Metabisulphite” would be wasted: stabiliser does not stop yeast that is at work, and there is no second dose.',
      ],
    ],
    [
      'wine that may be dry: no certainty in either direction',
      nearlyDry,
      [
        'There may be up to 4.9 grams of sugar left in each litre; a hydrometer cannot show it closer.',
        'Bottled now, it would ferment on: anything up to 1.4 bar in a bottle at 20 °C, 0.1 bar to 1.9 bar at 30 °C.',
        'A bottle for still wine is meant for 0.5 bar at 20 °C; this may be more, and glass bursts without warning.',
        undefined,
      ],
    ],
    [
      'wine that seems dry: still unproven',
      dry,
      [
        'There may be up to 4.9 grams of sugar left in each litre; a hydrometer cannot show it closer.',
        'Bottled now, it would ferment on: no pressure in a bottle at 20 °C, 0.1 bar to 1.9 bar at 30 °C.',
        'A bottle for still wine is meant for 0.5 bar at 20 °C; this is not more, but the proof that it stays so is missing.',
        undefined,
      ],
    ],
  ])('%s', (_, given, sentences) =>
    expect([
      consequence.sugar(given, formats),
      consequence.pressure(given, formats),
      consequence.beside(given, formats),
      consequence.wasted(given, formats),
    ]).toEqual(sentences),
  );
});
