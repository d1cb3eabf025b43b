import type { FermentWarning } from '../../domain/sums/ground/ferment-warnings';
import type { Celsius } from '../../domain/unit';
import type { Formats } from '../formats';
import { gravity, onDay, thousandths, when, type Expected, type OnDay } from './sums-figures';

const warnings: {
  [Code in FermentWarning['code']]: (w: Extract<FermentWarning, { code: Code }>, f: Formats) => string;
} = {
  stall: ({ probability, rest }, f) =>
    `It may come to rest too early, about ${thousandths(rest.value, f)}: ${f.number(probability * 10, 0)} courses in 10 that fit your readings do. See that it is warm, and read again in two days.`,
  cold: ({ celsius, warmEnough, daysLost }, f) =>
    `The wine was ${f.celsius(celsius as Celsius)} at the last reading; ${f.celsius(warmEnough as Celsius)} is wanted. Kept so cold, it takes about ${f.days(Math.round(daysLost))} longer than at ${f.celsius(21 as Celsius)}. Move it somewhere warmer.`,
  cooling: ({ warmEnough, inDays }, f) =>
    `The wine is cooling. At this pace it falls below ${f.celsius(warmEnough as Celsius)} in about ${f.days(Math.max(1, Math.round(inDays)))}. Keep it warm.`,
};

/** When the ferment may come to its end, and what may hold it up. */
export const forecast = {
  title: 'How it will go on',
  nothing: {
    before: 'A forecast begins with the yeast.',
    after: 'Fermentation is proven over: nothing is left to forecast.',
    beyond:
      'There is no forecast for this one: it reaches sixty days, and only a ferment that was never begun again.',
  },
  reached: (limit: number, on: OnDay, f: Formats) =>
    `The limit of ${gravity(limit, f)} was reached on ${onDay(on, f)}.`,
  limit: (limit: number, expected: Expected, f: Formats) =>
    `The limit of ${gravity(limit, f)}: ${when(expected, f)}.`,
  limitNotExpected: (limit: number, f: Formats) =>
    `By these readings it does not come down to ${gravity(limit, f)} in sixty days.`,
  gate: (expected: Expected, f: Formats) => `The dryness gate may open: ${when(expected, f)}.`,
  gateNotExpected: 'By these readings the dryness gate does not open in sixty days.',
  proof: 'A forecast opens nothing: only your readings do.',
  warnings,
  source:
    'Courses of ferments weighed by your readings, in the warmth that you read (Michaelis and Menten; Ough and Amerine, 1961). Before the third reading it is wide.',
};
