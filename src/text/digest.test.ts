import { expect, test } from 'vitest';
import { Maker } from '../../tests/story/maker';
import type { Gravity } from '../domain/gravity';
import type { Celsius, Litres } from '../domain/unit';
import type { KitSheet } from '../procedure/kit-sheet';
import { builtInSheets } from '../procedure/kits';
import { digest } from './digest';
import { en } from './en';
import { formatsFor } from './formats';

const [hedge] = builtInSheets.filter(({ id }) => id === 'hedge-lantern') as [KitSheet];
const formats = formatsFor({
  preferences: { volume: 'litres', temperature: '°C' },
  language: 'en',
  timeZone: 'UTC',
});
const digestOf = ({ sheet, facts, place }: Maker): string => digest({ sheet, facts, place }, en, formats);

test('before anything happened it says what kit it is, and where it stands', () =>
  expect(digestOf(new Maker(hedge))).toBe(
    [
      'Hedge Lantern, edition 3 (light fruit wine, raspberry and apple)',
      'Stands at: Check the box, Lay out the sachets',
    ].join('\n'),
  ));

test('later it holds what a helper asks for: readings with temperatures, additions, and what went wrong', () => {
  const maker = new Maker(hedge).goTo('ferment').wait(80);
  maker.read({
    reading: 10_300 as Gravity,
    sampleCelsius: 24 as Celsius,
    wineCelsius: 23 as Celsius,
    degassed: false,
  });
  maker.report({ type: 'mishap told', how: 'key', mishap: 'wine spilled', litres: 2 as Litres });
  maker.report({ type: 'mishap told', how: 'key', mishap: 'stabiliser too early', sachet: 'sorbate' });
  maker.report({ type: 'left out', how: 'key', sachet: 'finings', reason: 'an allergy at home' });
  expect(digestOf(maker).split('\n')).toEqual([
    'Hedge Lantern, edition 3 (light fruit wine, raspberry and apple)',
    'Stands at: Ferment, Read the gravity on the way, day 4 since the yeast, 21 litres',
    '',
    'Readings, corrected to 20 °C',
    '- day 0: 1.067 (read 1.067 at 20 °C; wine 21 °C)',
    '- day 4: 1.031 (read 1.030 at 24 °C; wine 23 °C; gas not shaken out)',
    '',
    'In the wine',
    '- day 0: Bentonite, first in',
    '- day 0: Wine yeast',
    '- day 4: Potassium sorbate, stabiliser',
    '',
    'Left out',
    `- ${hedge.sachets.find(({ id }) => id === 'finings')?.printed ?? ''}: an allergy at home`,
    '',
    'What happened',
    '- day 4: Some was spilled or drawn off, 2 litres',
    '- day 4: Stabiliser went in before fermentation was over, Potassium sorbate, stabiliser',
  ]);
});
