import type { Sentences } from '../sentences';
import { unfermented } from '../unfermented';
import { counted, lower } from './counted';

const flooredToTenth = (hours: number): number => Math.floor(hours * 10) / 10;

/** What holds the dryness gate shut. */
export const notFinished = {
  'not-dry': ({ gravity, limit }, f) => {
    const { grams, bar } = unfermented(gravity, limit);
    const pressure =
      bar === undefined ? 'far more than a bottle can hold' : `about ${f.bar(bar)} in a closed bottle`;
    return `The wine reads ${f.gravity(gravity)} and must read ${lower(f.gravity(limit))}. The difference is about ${f.grams(grams < 10 ? grams : Math.round(grams))} of sugar in each litre, ${pressure}. Leave it warm, and read again tomorrow.`;
  },
  'was-not-dry': ({ gravity, limit, takenAt }, f) =>
    `The reading of ${f.dateTime(takenAt)} was ${f.gravity(gravity)}; each one that counts must be ${lower(f.gravity(limit))}. Go on reading: that one drops out once a dry reading is old enough.`,
  'wine-too-cold': ({ wine, atLeast }, f) =>
    `The wine was ${f.celsius(wine)} at the newest reading and must be ${f.celsius(atLeast)} or more. In cold wine the yeast only sleeps. Move it somewhere warmer, and read again when it is warm.`,
  'sample-gassy': () =>
    'The newest sample still held gas, and bubbles lift the hydrometer. Shake the gas out of a fresh sample, and read again.',
  'last-reading-back-dated': () =>
    'The newest reading was entered later than it was taken. Take one now, and enter it at once.',
  'too-few-readings': ({ counted: taken, wanted, hours, hoursWanted }, f) => {
    const apart = `first and last at least ${f.hours(hoursWanted)} apart`;
    return taken < wanted
      ? `${counted(f, taken, 'reading')} so far; ${counted(f, wanted, 'reading')} are needed, ${apart}. Take the next one on its day.`
      : `The readings lie ${f.hours(flooredToTenth(hours))} apart; they must lie ${f.hours(hoursWanted)} apart. Take one more when that time is over.`;
  },
  'still-falling': ({ by, resolution }, f) =>
    `The readings fell by ${f.gravity(by)}; up to ${f.gravity(resolution)} would count as unchanged on your scale. The yeast is still at work. Leave it warm, and read again tomorrow.`,
  'reading-rose': ({ by, resolution }, f) =>
    `The reading rose by ${f.gravity(by)}, more than the ${f.gravity(resolution)} that your scale can mistake. Fermenting never does that; gas, a wrong temperature or a misread line does. Shake the gas out, and read again.`,
  'cannot-tell-yet': ({ fall, resolution }, f) =>
    `The readings fell by ${f.gravity(fall)}. That is within the ${f.gravity(resolution)} your scale can show, so nobody can tell yet. Take one more reading, at least ${f.hours(24)} after the last.`,
  'too-soon': ({ day, minimumDays }, f) =>
    `It is ${f.dayNumber(day)} since the yeast; the sheet asks for ${f.dayNumber(minimumDays)}. Leave it closed and warm until then.`,
  'no-yeast-yet': () => 'The yeast is not in yet, so there is nothing to prove. Go on to the yeast first.',
} satisfies Partial<Sentences>;
