import type { Pace } from '../../domain/gates/ferment-pace';
import type { Rung } from '../../procedure/facts';
import type { Formats } from '../formats';

/** How the ferment is going: what it means, and what to do about it. */
type PaceWords = { means: string; now: string };

type Paces = {
  [Code in Pace['code']]: (pace: Extract<Pace, { code: Code }>, formats: Formats) => PaceWords;
};

/** How it goes, in a word or two. */
export const paceTitles: Record<Pace['code'], string> = {
  unread: 'Not read yet',
  dry: 'Low enough',
  going: 'It goes on',
  slow: 'Slow',
  stuck: 'Stuck',
  cold: 'Too cold',
  misread: 'Misread?',
};

const NEVER_STABILISER = 'No stabiliser: it cannot end a ferment, only spoil the next attempt to.';

export const pace: Paces = {
  unread: () => ({
    means: 'Nothing has been read since the yeast went in, so nobody can tell how far it is.',
    now: 'Take a reading when there has been foam for a few days. Bubbles in the airlock do not tell.',
  }),
  dry: () => ({
    means:
      'The newest reading is at the limit or lower. Whether the yeast has stopped, only the next can show.',
    now: 'Keep it as warm as it is, and take the readings that the question of dryness asks for.',
  }),
  going: ({ perDay }, f) => ({
    means:
      perDay > 0
        ? `The yeast is at work: the gravity falls by about ${f.gravity(perDay)} a day.`
        : 'There is one reading so far. The next one shows how fast it goes.',
    now: 'Leave it warm and closed. Read on the next day that is shown.',
  }),
  slow: ({ perDay }, f) => ({
    means:
      perDay > 0
        ? `It goes on, though slowly: about ${f.gravity(perDay)} a day. Towards the end every wine does that.`
        : 'The last two readings are the same. That is slow, and not yet stuck: three days decide that.',
    now: `Check that the wine itself is warm, by night too. Leave it closed, and read again in two days. ${NEVER_STABILISER}`,
  }),
  stuck: ({ hours, fall }, f) => ({
    means: `In ${f.duration(Math.floor(hours) * 3600)} the gravity ${fall > 0 ? `fell by no more than ${f.gravity(fall)}` : 'did not fall at all'}, though the wine is warm and above its limit. The yeast has stopped before the sugar ran out: it is stuck.`,
    now: `Take the help that is shown, one at a time and the gentlest first. ${NEVER_STABILISER}`,
  }),
  cold: ({ wine, atLeast }, f) => ({
    means: `The wine is ${f.celsius(wine)}, and the yeast wants ${f.celsius(atLeast)} or more. Cold yeast pauses; it has not finished, and it is not stuck.`,
    now: 'Move it somewhere warmer, or wrap it; never stand it on a heat pad, least of all glass. Read again after a warm day.',
  }),
  misread: ({ by }, f) => ({
    means: `The newest reading is ${f.gravity(by)} higher than the one before. Fermenting never does that, so one of the two is wrong, or something was added.`,
    now: 'Shake the gas out of a fresh sample, take its temperature, and read at eye level. Strike out the one that was wrong.',
  }),
};

/** One step of help for a stuck ferment: what is shown, how it is done, and when to look again. */
type RungWords = { show: string; how: string; again: string };

const IN_THREE_DAYS =
  'Leave it closed and warm. Read again after 72 hours: less than 0.001 of fall, and the next help comes.';

export const rungs: Record<Rung, RungWords> = {
  'read again': {
    show: 'Check the reading and its temperature.',
    how: 'Draw a fresh sample, shake its gas out, and take its temperature in the jar. Spin the hydrometer and read it at eye level; then take the temperature of the wine itself. Gas, a cold wine or a misread line looks exactly like a stuck ferment.',
    again:
      'If it agrees, take the next help now. If it is lower, the yeast is at work: leave it, and look again after 72 hours.',
  },
  warmed: {
    show: 'Warm the wine by 2 to 3 °C (4 to 5 °F).',
    how: 'Move the vessel, wrap it, or warm the room, and keep it so by night too. Slowly: a day for the whole step. Stay within the range of the yeast, and never use a heat pad under glass.',
    again: IN_THREE_DAYS,
  },
  roused: {
    show: 'Stir up the yeast, gently.',
    how: 'Sanitise a long spoon. Stir for one second and wait, since gas can rush up; then lift the sediment from the bottom with slow strokes, without splashing, for a minute. Close it again at once.',
    again: `${IN_THREE_DAYS} Do not stir again meanwhile.`,
  },
  'fresh starter': {
    show: 'Add a fresh starter that is already at work.',
    how: 'Wake fresh wine yeast in a sanitised jar as its sachet says, with a little juice. When it foams, double it with wine from the vessel, and again each time that it foams, until there is about a litre; then pour it in. Yeast straight from the sachet dies in half-made wine.',
    again:
      'Keep it warm and closed. Read again after 72 hours: a fall of 0.001 or more shows that it has taken.',
  },
};

/** The page of help: one rung at a time. */
export const ladder = {
  title: (nth: number, of: number) => `Help ${nth} of ${of}`,
  did: 'I have done this',
  leave: 'leave it for now',
  tried: 'Tried so far',
  on: (show: string, when: string) => `${show.replace(/\.$/, '')}: ${when}.`,
  lookAgain: 'Look again',
  lookOn: (when: string) => `Read again on ${when}, or later. Until then, leave it closed and warm.`,
  lookNow: 'Its three days are over. Take a reading now: it shows whether the help has taken.',
  allTried:
    'All four helps were given their time, and the wine has not moved. Ask where you bought the kit, with these readings in hand. It keeps under its airlock, full and cool. No stabiliser, and no bottle: what is sweet and not proven still is never safe under a cork.',
  unstuck: 'The wine is not stuck now. Nothing is to be done but to read on the day that is shown.',
};
