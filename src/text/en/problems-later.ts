import type { Sentences } from '../sentences';
import { counted } from './counted';

/** What holds a gate or a check shut, from the gas to the bottles. */
export const later = {
  'gas-not-tested': ({ passes, wanted }, f) =>
    `${counted(f, passes, 'calm shake test')} so far; ${counted(f, wanted, 'calm test')} in a row are needed. Shake wine and plain water at the same temperature, and compare.`,
  gassy: ({ failures }, f) =>
    `The wine was livelier than plain water in ${counted(f, failures, 'shake test')}. Stir again by the timer, turning about at the beep, and test again.`,
  'fining-too-cold': ({ wine, atLeast }, f) =>
    `The wine is ${f.celsius(wine)}; finings work at ${f.celsius(atLeast)} or more. Move it somewhere warmer, and measure again.`,
  'wine-not-measured': () => 'The wine has not been measured for warmth. Take its temperature first.',
  'gap-not-measured': () =>
    'It is not known how full the vessel is. Measure from the wine up to the stopper, and enter it.',
  'gap-too-wide': ({ millimetres, atMost }, f) =>
    `The wine stands ${f.count(millimetres)} mm below its stopper; ${f.count(atMost)} mm or less is wanted, since air turns it brown. Add a like wine, and measure again.`,
  'clearing-too-short': ({ day, minimumDays }, f) =>
    `The wine has cleared for ${f.days(day)}; the sheet asks for ${f.days(minimumDays)}. Leave it dark and still until then.`,
  'not-looked-at': ({ days, wanted }, f) =>
    `The wine was seen clear on ${f.days(days)}; ${f.days(wanted)} are needed. Look again on another day, in the same light.`,
  cloudy: () =>
    'The wine was cloudy when you last looked, and it would stay so in the bottle. Leave it still, and look again in a few days.',
  'no-baseline': () =>
    'There is no reading from after the last addition to compare with. Stir the sample, shake its gas out, and read.',
  'dryness-in-doubt': ({ since }, f) =>
    `A reading that showed fermentation to be over was struck on ${f.dateTime(since)}, and without it that is not shown. Take a new baseline, and leave the wine closed and warm for a week; do not bottle it meanwhile.`,
  'no-reading-since-baseline': ({ days, wanted }, f) =>
    `The comparing reading is ${f.days(days)} old, and the next counts after ${f.days(wanted)}. Take one when they are over.`,
  'still-moving': ({ by, resolution }, f) =>
    `The wine fell by ${f.gravity(by)} since the last addition; up to ${f.gravity(resolution)} would count as unchanged. The yeast is at work again. Do not bottle: keep it warm under its airlock, and read again.`,
  'wine-not-proven-still': () =>
    'It is not shown that the wine is still, and a bottle filled too soon can burst. Take the readings that the last question asks for.',
  'not-counted': () => 'Bottles and closures have not been counted. Count both, and look at every rim.',
  'too-few-bottles': ({ bottles, wanted }, f) =>
    `There ${bottles === 1 ? 'is' : 'are'} ${counted(f, bottles, 'bottle')}, and the wine fills ${counted(f, wanted, 'bottle')}. Find the rest before you start: a half-empty vessel does not keep.`,
  'too-few-closures': ({ closures, wanted }, f) =>
    `There ${closures === 1 ? 'is' : 'are'} ${counted(f, closures, 'closure')} for ${counted(f, wanted, 'bottle')}. Get the rest, and a few to spare, before you start.`,
  'cork-in-screw-thread': () =>
    'Some of the bottles have a screw thread, and a cork can split their thin necks. Put those aside, and count again without them.',
  'glass-in-wine': () =>
    'A hydrometer broke in this wine, and no sieve or siphon finds every splinter. Do not bottle or taste it: close the batch as discarded; if it was told by mistake, take that back.',
} satisfies Partial<Sentences>;
