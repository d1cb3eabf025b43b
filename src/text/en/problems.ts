import type { Problem } from '../../domain/problem';
import type { Counting } from '../../domain/parse-within';
import type { Gravity } from '../../domain/gravity';
import type { Celsius, Litres } from '../../domain/unit';
import type { Formats } from '../formats';
import { unfermented } from '../unfermented';
import { unsafe } from './away';
import { counted, quoted } from './counted';
import { asPlain, faultLines } from './faults';
import { notAsTold } from './not-as-told';

type Sentences = {
  [Code in Problem['code']]: (problem: Extract<Problem, { code: Code }>, formats: Formats) => string;
};

const misread: Pick<
  Sentences,
  | 'gravity-misread'
  | 'temperature-misread'
  | 'volume-misread'
  | 'count-misread'
  | 'number-misread'
  | 'time-misread'
  | 'in-the-future'
  | 'before-the-batch'
  | 'sample-out-of-reach'
  | 'water-misread'
> = {
  'gravity-misread': ({ given, lowest, highest }, f) =>
    `${quoted(given)} is not a reading between ${f.gravity(lowest)} and ${f.gravity(highest)}. Look again at eye level, and give it as 996 or 0.996.`,
  'temperature-misread': ({ given, lowest, highest }, f) =>
    `${quoted(given)} is not a temperature between ${f.celsius(lowest)} and ${f.celsius(highest)}. Look at the thermometer again, and check which scale is set.`,
  'volume-misread': ({ given, lowest, highest }, f) =>
    `${quoted(given)} is not between ${f.litres(lowest)} and ${f.litres(highest)}. Measure again, and check which unit is set.`,
  'count-misread': ({ given, highest }, f) =>
    `${quoted(given)} is not a whole number up to ${f.count(highest)}. Count again, and type it in figures.`,
  'number-misread': ({ given, counting, lowest, highest }, f) =>
    `${quoted(given)} is not between ${countings[counting](f.number(lowest, 3))} and ${countings[counting](f.number(highest, 3))}. Look again, and type it in figures.`,
  'time-misread': ({ given }) =>
    `${quoted(given)} is not a date and time. Choose the day and the hour again.`,
  'in-the-future': ({ takenAt }, f) =>
    `${f.dateTime(takenAt)} has not come yet. Check the date, and the clock of this device.`,
  'before-the-batch': ({ takenAt, begun }, f) =>
    `${f.dateTime(takenAt)} is before this batch began, on ${f.dateTime(begun)}. Check the date and give it again.`,
  'sample-out-of-reach': ({ gravity, celsius }, f) =>
    `A reading of ${f.gravity(gravity)} in a sample at ${f.celsius(celsius)} cannot be corrected. Bring the sample near ${f.celsius(20 as Celsius)} and read again.`,
  'water-misread': ({ gravity, celsius }, f) =>
    `In water at ${f.celsius(celsius)} the hydrometer showed ${f.gravity(gravity)}; a sound one is off by ${f.gravity(50 as Gravity)} at most. Check that jar and water are clean and plain, spin it, and read again. If it shows the same, use another one.`,
};

const countings: Record<Counting, (number: string) => string> = {
  pH: (number) => `a pH of ${number}`,
  percent: (number) => `${number} %`,
  grams: (number) => `${number} grams`,
  'milligrams per litre': (number) => `${number} mg/L`,
  millimetres: (number) => `${number} mm`,
  brix: (number) => `${number} °Brix`,
  gravity: (number) => `a gravity of ${number}`,
};

/** What a maker is asked before a doubtful reading counts. */
const questioned: Pick<Sentences, 'reading-jumped' | 'reading-went-up'> = {
  'reading-jumped': ({ by, hours }, f) =>
    `The gravity fell by ${f.gravity(by)} ${hours < 1 ? 'within the hour' : `in ${f.duration(hours * 3600)}`}. In the wild first days that can be so; at other times a line was misread, or the temperature is wrong. Look again at eye level, and say so if it is right.`,
  'reading-went-up': ({ by }, f) =>
    `The gravity rose by ${f.gravity(by)}. Fermenting never does that; gas in the sample, a wrong temperature, a misread line or added water does. Shake the gas out and read again, and say so if it is right.`,
};

const lower = (limit: string): string => `${limit} or lower (lower is later)`;

const notFinished: Pick<
  Sentences,
  | 'not-dry'
  | 'was-not-dry'
  | 'wine-too-cold'
  | 'sample-gassy'
  | 'last-reading-back-dated'
  | 'too-few-readings'
  | 'still-falling'
  | 'reading-rose'
  | 'cannot-tell-yet'
  | 'too-soon'
  | 'no-yeast-yet'
> = {
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
};

const flooredToTenth = (hours: number): number => Math.floor(hours * 10) / 10;

const notYet: Pick<
  Sentences,
  | 'box-not-checked'
  | 'sachets-missing'
  | 'hydrometer-not-checked'
  | 'vessel-too-small'
  | 'no-start-reading'
  | 'under-stirred'
  | 'start-outside'
  | 'must-not-measured'
  | 'must-too-cold'
  | 'must-too-warm'
  | 'not-alive-yet'
  | 'not-low-enough-to-move'
  | 'dryness-not-proven'
  | 'dryness-stale'
  | 'added-since'
  | 'stabilisers-not-in-hand'
  | 'surface-rushes'
  | 'no-room-for-foam'
  | 'stabilisers-not-all-in'
> = {
  'box-not-checked': () => 'The sachets have not been checked by name. Lay them out and tick each one.',
  'sachets-missing': ({ missing }, f) =>
    `${f.list(missing.map(quoted))} ${missing.length === 1 ? 'is' : 'are'} missing. Look in the lid and between the bags; if it stays missing, ask where you bought the kit, and do not open the juice.`,
  'hydrometer-not-checked': () =>
    'The hydrometer has not been checked in plain water. Float it in water, and enter what it shows.',
  'vessel-too-small': ({ brim, batch }, f) =>
    `The vessel holds ${f.litres(brim)} to the brim, and the batch is ${f.litres(batch)}: foam would have no room. Use one that holds ${f.litres((batch * 1.25) as Litres)} or more.`,
  'no-start-reading': () =>
    'There is no start reading yet. Stir, draw a sample from the middle, and read it.',
  'under-stirred': ({ seconds, wanted }, f) =>
    `The juice was stirred for ${f.duration(seconds)}; it needs ${f.duration(wanted)} by the timer. Stir again, bottom to top.`,
  'start-outside': ({ gravity, lowest, highest, litresOver }, f) => {
    const water = f.litres(Math.abs(litresOver) as Litres);
    const amount = litresOver > 0 ? `about ${water} of water too much` : `about ${water} of water too little`;
    return `The start reading is ${f.gravity(gravity)}; the sheet has ${f.gravity(lowest)} to ${f.gravity(highest)}. If the juice is well mixed, that is ${amount}. Stir and read again first, then check the fill mark and its unit.`;
  },
  'must-not-measured': () =>
    'The juice has not been measured for warmth. Take its temperature before the yeast goes in.',
  'must-too-cold': ({ must, lowest, highest }, f) =>
    `The juice is ${f.celsius(must)}; the yeast wants ${f.celsius(lowest)} to ${f.celsius(highest)}. Move it somewhere warmer, close it, and measure again.`,
  'must-too-warm': ({ must, lowest, highest }, f) =>
    `The juice is ${f.celsius(must)}; the yeast wants ${f.celsius(lowest)} to ${f.celsius(highest)}, and heat can kill it. Close it, let it cool, and measure again.`,
  'not-alive-yet': ({ hours }, f) =>
    `${f.hours(Math.floor(hours))} after the yeast there is no foam and no fall in gravity. Check that the juice is warm, stir it once, and look again.`,
  'not-low-enough-to-move': ({ gravity, limit }, f) =>
    `The wine reads ${f.gravity(gravity)}; it moves at ${lower(f.gravity(limit))}. Moved now it could foam out. Leave it, and read again tomorrow.`,
  'dryness-not-proven': () =>
    'It is not shown that fermentation is over, and this must not go in before. Take the readings that the dryness question asks for.',
  'dryness-stale': ({ hours, allowed }, f) =>
    `It is ${f.hours(Math.ceil(hours))} since fermentation was shown to be over, and that holds for ${f.hours(allowed)}. Take one fresh reading, and go on if it agrees.`,
  'added-since': ({ sachet }) =>
    `${quoted(sachet)} went in after fermentation was shown to be over, and may have woken the yeast. Take fresh readings, as if for the first time.`,
  'stabilisers-not-in-hand': ({ missing }, f) =>
    `${f.list(missing.map(quoted))} ${missing.length === 1 ? 'is' : 'are'} not in hand, and half a treatment spoils the wine. Find every one before you open any.`,
  'surface-rushes': () =>
    'A knock of the surface raised a rush of gas, and powder would make it erupt. Stir the gas out first, and knock again.',
  'no-room-for-foam': ({ room, wanted }, f) =>
    `The room above the wine is ${f.litres(room)}, and foam needs ${f.litres(wanted)}. Draw some wine off into a clean jar, close it, and keep it cool for topping up.`,
  'stabilisers-not-all-in': ({ missing }, f) =>
    `${f.list(missing.map(quoted))} ${missing.length === 1 ? 'is' : 'are'} not in yet, and sugar without it would ferment in the bottle. Add the stabiliser first.`,
};

const later: Pick<
  Sentences,
  | 'gas-not-tested'
  | 'gassy'
  | 'fining-too-cold'
  | 'wine-not-measured'
  | 'gap-not-measured'
  | 'gap-too-wide'
  | 'clearing-too-short'
  | 'not-looked-at'
  | 'cloudy'
  | 'no-baseline'
  | 'dryness-in-doubt'
  | 'no-reading-since-baseline'
  | 'still-moving'
  | 'wine-not-proven-still'
  | 'not-counted'
  | 'too-few-bottles'
  | 'too-few-closures'
  | 'cork-in-screw-thread'
  | 'glass-in-wine'
> = {
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
};

const outOfPlace: Pick<
  Sentences,
  | 'already-done'
  | 'not-this-act'
  | 'clock-not-running'
  | 'clock-already-running'
  | 'clock-not-over'
  | 'nothing-to-correct'
  | 'batch-has-ended'
  | 'no-such-way-back'
  | 'earlier-than-the-last'
  | 'reason-too-short'
  | 'not-by-voice'
  | 'does-not-yield'
  | 'cannot-be-left-out'
  | 'not-safe-to-leave'
  | 'not-the-next-rung'
> = {
  'already-done': () => 'That is done already, and counts once. Go on with what is shown now.',
  'not-this-act': () => 'That does not belong to where the batch stands now. Go on with what is shown.',
  'clock-not-running': () => 'The timer has not been started. Start it first, then do what it times.',
  'clock-already-running': () => 'The timer is running already. Let it run, or pause it.',
  'clock-not-over': ({ seconds }, f) =>
    `There are ${f.duration(seconds)} to go. Wait for the end of the time.`,
  'nothing-to-correct': () => 'There is no such reading to strike out. Choose one from the list of readings.',
  'batch-has-ended': () =>
    'This batch has ended, and its record is closed. Start a new batch to make another.',
  'no-such-way-back': () =>
    'There is no way back from here for that reason. Choose one of those that are shown.',
  'earlier-than-the-last': () =>
    'The clock of this device is behind the last entry of the batch. Set the clock right, and try again.',
  'reason-too-short': () =>
    'This needs a reason in your own words, typed. Write a short sentence; it stays with the batch.',
  'not-by-voice': () => 'A voice can be misheard, and this is for good. Use the screen, with dry hands.',
  'does-not-yield': () =>
    'No reason opens this, or not yet: it is there so that nobody is hurt and no wine is lost. Give it the reading or test that it asks for.',
  'cannot-be-left-out': ({ sachet }) =>
    `${quoted(sachet)} cannot be left out. Yeast is what makes it wine, and what is in the wine already stays in it. Go on with what is shown.`,
  'not-safe-to-leave': ({ why, atMostDays }, f) => unsafe[why](atMostDays, f),
  'not-the-next-rung': () =>
    'Help comes one step at a time, the gentlest first. Take the one that is shown, and give it its three days.',
};

const unreadable: Pick<
  Sentences,
  | 'not-json'
  | 'not-a-kit-sheet'
  | 'not-a-batch-file'
  | 'newer-format'
  | 'sheet-refused'
  | 'batch-file-damaged'
  | 'report-misread'
  | 'journal-gap'
  | 'header-lost'
  | 'journal-mismatch'
  | 'no-such-batch'
  | 'no-such-place'
> = {
  'not-json': () =>
    'This file is not whole, or is of another kind. Choose a kit sheet or a batch file, or fetch it again.',
  'not-a-kit-sheet': () =>
    'This file is not a kit sheet of this guide. Choose one that was exported as a kit sheet.',
  'not-a-batch-file': () =>
    'This file is not a batch of this guide. Choose one that was exported as a batch.',
  'newer-format': ({ version }) =>
    `This file is of version ${String(version)}, which is newer than this guide. Bring the guide up to date, and open the file again.`,
  'sheet-refused': ({ faults }, f) =>
    [
      `This kit sheet cannot be used yet. Put ${counted(f, faults.length, 'thing')} right in it, and open it again.`,
      ...faultLines(faults),
    ].join('\n'),
  'batch-file-damaged': ({ path, given }) =>
    `This batch file is damaged at ${path || 'its beginning'}, where it has ${quoted(asPlain(given))}. Nothing was changed here. Use another copy of the file.`,
  'report-misread': ({ path, given }) =>
    `The entry could not be kept: at ${path || 'its beginning'} it has ${quoted(asPlain(given))}. Give it again; nothing else was changed.`,
  'header-lost': ({ entries }, f) =>
    `The beginning of this batch is lost, and with it which kit it is; ${counted(f, entries, 'entry', 'entries')} of its record remain. Open an exported copy of the batch.`,
  'journal-gap': ({ entry }) =>
    `Entry ${String(entry)} of the record is missing. Everything before it is safe. Export what is there, and go on from it, or open an older export.`,
  'journal-mismatch': ({ entry, type, reason }, f) =>
    `Entry ${String(entry)} of the record (${type}) does not fit what came before it. ${whatIsWrong(reason, f)} Everything before it is safe: export the batch, and go on from there.`,
  'no-such-batch': () =>
    'There is no such batch on this device. Go back to the list of batches, or open its file.',
  'no-such-place': ({ address }) => `There is nothing at ${quoted(address)}. Go back to the list of batches.`,
};

const device: Pick<
  Sentences,
  'storage-refused' | 'storage-full' | 'written-elsewhere' | 'no-second-copy' | 'file-unreadable'
> = {
  'storage-refused': () =>
    'This browser lets nothing be kept, as in a private window. Open the guide in an ordinary window, or export the batch before you close it.',
  'storage-full': () =>
    'There is no room left on this device. Make room, then give the last entry again; all earlier ones are safe.',
  'written-elsewhere': () =>
    'Another window has gone on with this batch, and this one now shows the same. Look where it stands, and answer again.',
  'no-second-copy': ({ reason }, f) =>
    `The batch is kept, but not twice: its second copy failed. ${whatIsWrong(reason, f)} Export the batch now and again until there is one.`,
  'file-unreadable': () => 'The file could not be read. Check that it is still there, and choose it again.',
};

/** The sentence for every problem: what is wrong, in numbers, and what to do next. Never whose fault it was. */
export const problems: Sentences = {
  ...misread,
  ...questioned,
  ...notFinished,
  ...notYet,
  ...later,
  ...outOfPlace,
  ...notAsTold,
  ...unreadable,
  ...device,
};

/** What is wrong, of a problem inside a problem: its first sentence, since what to do is the outer one's to say. */
function whatIsWrong(problem: Problem, formats: Formats): string {
  const sentence = problems[problem.code] as (problem: Problem, formats: Formats) => string;
  return sentence(problem, formats).split(/(?<=\.) /)[0] ?? '';
}
