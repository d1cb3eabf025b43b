import type { Sentences } from '../sentences';
import { quoted } from './counted';
import { unsafe } from './unsafe-to-leave';

/** What the batch does not take where it stands. */
export const outOfPlace = {
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
} satisfies Partial<Sentences>;
