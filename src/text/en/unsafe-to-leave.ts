import type { Unsafe } from '../../domain/problem';
import type { Formats } from '../formats';

const days = (atMost: number, f: Formats): string => (atMost === 0 ? 'not at all' : `for ${f.days(atMost)}`);

/** Why a batch cannot be left for so long: what is at stake, how long would do, and what to do instead. */
export const unsafe: Record<Unsafe, (atMostDays: number, formats: Formats) => string> = {
  'away-ends-before-it-begins': () =>
    'The day of return must come after the day of leaving, and must not be past. Choose both again.',
  'yeast-is-starting': (_, f) =>
    `Until ${f.dayNumber(3)} after the yeast somebody must see it start, and keep the foam in. Leave later, or add the yeast only when you can stay.`,
  'ferment-too-long': (atMost, f) =>
    `A ferment may be left ${days(atMost, f)}: after that no gas covers the wine any more. Come back by then, or ask someone to look at the airlock and take a reading.`,
  'finished-unstabilised': (atMost, f) =>
    `Finished wine without stabiliser may be left ${days(atMost, f)}: nothing guards it against air. Come back by then, or go on with it before you leave.`,
  'between-stabilising-and-fining': (atMost, f) =>
    `Between stabiliser and finings the wine may be left ${days(atMost, f)}: they belong together. Finish fining and topping up first, or leave later.`,
  'clearing-too-long': (atMost, f) =>
    `Clearing wine may be left ${days(atMost, f)}: the airlock dries out. Come back by then, or ask someone to fill it.`,
  'sweetened-too-long': (atMost, f) =>
    `Sweetened wine may wait ${days(atMost, f)} outside its bottles, full and under its airlock. Come back by then, or bottle it before you leave.`,
  'bottles-open': (atMost, f) =>
    atMost === 0
      ? 'Clean bottles wait for their wine, and filled ones may never stand open. Fill, close and count them all before you leave.'
      : `The wine may wait for its bottles ${days(atMost, f)}; then it must be shown to be still again. Come back by then, or bottle it before you leave.`,
};
