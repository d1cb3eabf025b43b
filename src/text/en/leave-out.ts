import type { Gravity } from '../../domain/gravity';
import type { Contents } from '../../procedure/contents';
import type { Formats } from '../formats';
import { quoted } from './counted';

/** The dry limit of a batch that nothing holds back later. */
type Means = (formats: Formats, dryLimit: Gravity) => string;

const finings: Means = () =>
  'It clears by itself then, later: in weeks or months instead of days. Finings of two parts work as a pair: leave out both, or neither.';

const means: Record<Exclude<Contents, 'yeast'>, Means> = {
  sorbate: (f, dryLimit) =>
    `Nothing holds back the yeast that is left. So nothing sweet goes in, and the wine must be as dry as it can be: ${f.gravity(dryLimit)} or lower (lower is later).`,
  sulphite: (f, dryLimit) =>
    `The wine keeps for months instead of years, and browns sooner. Where it belongs to stabilising, the sorbate stays out too, since alone it can turn to a smell of geraniums; then nothing sweet goes in, and the wine must read ${f.gravity(dryLimit)} or lower. It is not free of sulphite even so: yeast makes a little.`,
  bentonite: () => 'It clears later. Do not make up for it later beside other finings: they undo each other.',
  'silica finings': finings,
  'shellfish finings': finings,
  'fish finings': finings,
  'gelatine finings': finings,
  nutrient: () => 'The yeast may work slowly, or stop early. Keep it warm, and read a little more often.',
  oak: () => 'Only the taste is different: plainer, and sooner ready.',
  'sweetening pack': () => 'The wine stays dry. That is the safer way, and needs nothing else.',
};

/** Leaving a sachet out: yeast never, everything else with a reason and what follows from it. */
export const leaveOut = {
  title: 'Leave a sachet out',
  means,
  never: {
    yeast: 'Yeast cannot be left out: nothing else makes wine of the juice.',
    in: 'It is in the wine already, and stays in it.',
  },
  reason: 'Why leave it out?',
  hint: 'In your own words, typed. It stays on the batch for good, and goes on its label sheet.',
  leave: 'leave it out for good',
  keep: 'use it after all',
  afterwards: (printed: string, reason: string) =>
    `${quoted(printed)} was left out. The reason given: ${quoted(reason)}.`,
};
