import type { Celsius } from '../../domain/unit';
import type { HeldCode } from '../tonight-for';
import type { Sentences } from '../sentences';
import { quoted } from './counted';

const LEAVE_IT = 'Leave the lid on and the airlock filled with water.';
const WARM = 'Move it somewhere warmer, or wrap it; never stand it on a heat pad, least of all glass.';

/** What to do tonight, for each clause that a gate or a check can fail on. */
export const tonight: Sentences<HeldCode> = {
  'not-dry': ({ limit }, f) =>
    `Keep it warm and read again tomorrow; ${f.gravity(limit)} or lower is what you wait for. No stabiliser: it cannot stop yeast that is at work.`,
  'was-not-dry': () => `Nothing but the next reading. ${LEAVE_IT}`,
  'wine-too-cold': ({ atLeast }, f) =>
    `${WARM} Read again when the wine has been ${f.celsius(atLeast)} or more for a day.`,
  'sample-gassy': () =>
    'Draw a fresh sample, cover the jar, shake and open it until nothing hisses, and read again now.',
  'last-reading-back-dated': () => 'Take a reading now: sample, temperature, eye level. It counts at once.',
  'too-few-readings': () =>
    `Nothing more tonight. ${LEAVE_IT} Keep it as warm as it is, and read on the day shown.`,
  'still-falling': () => `Let it work. ${LEAVE_IT} Read again tomorrow at about the same hour.`,
  'reading-rose': () =>
    'Read once more tonight: fresh sample, gas shaken out, its temperature taken in the jar. If an old reading was wrong, strike it out.',
  'cannot-tell-yet': ({ fall }, f) =>
    `One more reading tomorrow. If it is not lower than the last by ${f.gravity(fall)} or so, the question is answered. ${LEAVE_IT}`,
  'too-soon': ({ minimumDays }, f) =>
    `Nothing: the yeast is tidying up after itself. ${LEAVE_IT} Come back on ${f.dayNumber(minimumDays)}.`,
  'no-yeast-yet': () => 'Check the warmth of the juice, and add the yeast.',
  'box-not-checked': () => 'Lay the sachets out in a row and tick each by its printed name.',
  'sachets-missing': ({ missing }, f) =>
    `Ask where you bought the kit for ${f.list(missing.map(quoted))}. Keep the juice closed and cool; unopened it keeps to its date.`,
  'hydrometer-not-checked': () =>
    'Float the hydrometer in plain water at a known temperature, and enter what it shows.',
  'vessel-too-small': () =>
    'Find a larger vessel before you open the juice. Nothing is lost while it stays closed.',
  'no-start-reading': () => 'Stir again, and take the start reading before the yeast goes in.',
  'under-stirred': () => 'Stir for the whole time, from the bottom up, and read again.',
  'start-outside': () =>
    'Stir again for the whole time, wait until the bubbles are gone, and read from the middle. If it stays outside, it is recorded and you go on; the finish does not move.',
  'must-not-measured': () =>
    'Put the thermometer into the middle of the juice, wait a minute, and enter what it shows.',
  'must-too-cold': () => `${WARM} Closed and sanitised, it can wait a day for its yeast.`,
  'must-too-warm': () => 'Close it, and let it stand in a cool room. Measure every hour; add nothing to it.',
  'not-alive-yet': () =>
    'Check the warmth first; most slow starts are cold. Stir it once with a sanitised spoon, and look again in twelve hours. New yeast can still go in within about four days.',
  'not-low-enough-to-move': () => `Leave it where it is. ${LEAVE_IT} Read again tomorrow.`,
  'dryness-not-proven': () => 'Keep every stabiliser and sweetening sachet closed. Take the readings first.',
  'dryness-stale': () =>
    'Take one fresh reading tonight. If it agrees with the earlier ones, go straight on.',
  'added-since': () => `Keep it warm. ${LEAVE_IT} Take a reading tonight, and the next in two days.`,
  'stabilisers-not-in-hand': ({ missing }, f) =>
    `Look for ${f.list(missing.map(quoted))} among the sachets and the empties. Until it is found, leave the wine full, closed and under its airlock.`,
  'surface-rushes': () =>
    'Stir out the gas by the timer, slowly at first, with cloths around. No powder until a knock stays calm.',
  'no-room-for-foam': ({ wanted }, f) =>
    `Draw wine off into a clean jar, without splashing, until ${f.litres(wanted)} of the vessel are free. Close the jar with an airlock and keep it cool: it tops the vessel up later. Every stabiliser stays closed until there is room.`,
  'stabilisers-not-all-in': ({ missing }, f) =>
    `Keep the sweetening pack closed and cool. Add ${f.list(missing.map(quoted))} first.`,
  'gas-not-tested': () => 'Make the shake test twice, each time against plain water at the same temperature.',
  gassy: (_, f) =>
    `Stir once more by the timer, then test again. Cold wine holds on to its gas: below ${f.celsius(20 as Celsius)}, move it somewhere warmer and wait a day.`,
  'fining-too-cold': () => `${WARM} The finings can wait; keep them closed.`,
  'wine-not-measured': () => 'Take the temperature of the wine, in the middle of the vessel.',
  'gap-not-measured': () =>
    'Hold a ruler against the glass, from the wine up to the stopper, and enter what it shows.',
  'gap-too-wide': ({ atMost }, f) =>
    `Top up with a like wine until the gap is ${f.count(atMost)} mm or less. If there is none in the house, leave the vessel closed and still tonight: a day does no harm.`,
  'clearing-too-short': () => 'Nothing: leave it dark and still. Check that the airlock has water.',
  'not-looked-at': () => 'Look once today with torch or print, and once on another day.',
  cloudy: () =>
    'Do not bottle it: wine does not clear in the bottle. Leave it still, somewhere steady, and look again in a few days. If it stays cloudy, make the shake test: gas holds sediment up.',
  'no-baseline': () => 'Take a reading tonight: gently stirred, gas shaken out, its temperature taken.',
  'dryness-in-doubt': () =>
    'Do not bottle, and add nothing. Take a new baseline tonight: gently stirred, gas shaken out, its temperature taken. Then keep the wine warm and closed for a week.',
  'no-reading-since-baseline': () => 'Nothing: leave it closed, topped up and still. Read on the day shown.',
  'still-moving': () =>
    'Do not bottle, and add nothing. Keep it warm under its airlock, and read again tomorrow. It is safe where it is.',
  'wine-not-proven-still': () => 'Leave the wine in its vessel, closed and topped up. Bottles can wait.',
  'not-counted': () => 'Count bottles and closures, and run a finger round each rim.',
  'too-few-bottles': () => 'Collect and wash more bottles. The wine keeps well in its full vessel meanwhile.',
  'too-few-closures': () => 'Get more closures, a tenth more than bottles. The wine keeps well meanwhile.',
  'glass-in-wine': () =>
    'Do not taste it, and do not bottle it. Close the vessel, write “glass” on it, and sweep up with shoes and gloves on.',
  'cork-in-screw-thread': () => 'Set the bottles with a screw thread aside, and collect others.',
};
