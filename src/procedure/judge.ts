import type { Finish } from '../domain/gates/finish';
import { roomForFoam } from '../domain/gates/room-for-foam';
import { toppedUp } from '../domain/gates/topped-up';
import { HIGHEST_GRAVITY, type Gravity } from '../domain/gravity';
import { bottlesReady } from '../domain/gates/bottles-ready';
import { boxComplete, heldBack } from '../domain/gates/box-complete';
import { fallenBright } from '../domain/gates/fallen-bright';
import { fermentationFinished, type Fermented } from '../domain/gates/fermentation-finished';
import { gasGone } from '../domain/gates/gas-gone';
import { mayStabilise } from '../domain/gates/may-stabilise';
import { mustMixed, type StartRange } from '../domain/gates/must-mixed';
import { mustWarmEnough } from '../domain/gates/must-warm-enough';
import { wineStill } from '../domain/gates/wine-still';
import { standing, type Reading } from '../domain/reading';
import type { Celsius, Instant, Litres } from '../domain/unit';
import { open, shut, type Verdict } from '../domain/verdict';
import { bottlesWanted } from './bottles-wanted';
import type { Check } from './check';
import { isStabiliser } from './contents';
import { asOf, isIn, litresNow, timesReturned, toldOf, type Facts } from './facts';
import type { KitSheet } from './kit-sheet';
import {
  earlyMoveAt,
  finishOf,
  inUse,
  pitchRangeOf,
  STIR_MUST_SECONDS,
  stabilisersOf,
  startRangeOf,
} from './limits';
import { passedBefore } from './passed-before';
import type { Gate } from './phase';
import {
  lastDegassed,
  lastPouredBack,
  lastStirredUp,
  provenBySugarTest,
  readingsOfDryness,
  readingsOfFerment,
  readingsOfMust,
  vesselNow,
} from './selections';
import { hasYielded, yielding } from './yielding';

/** Every verdict there is, gates and checks alike: pure, and judged at the facts' own `now`. */
export const judge = (question: Gate | Check, sheet: KitSheet, facts: Facts): Verdict =>
  yielding(question, VERDICTS[question](inUse(sheet, facts.leftOut), facts), facts);

const VERDICTS: Record<Gate | Check, (sheet: KitSheet, facts: Facts) => Verdict> = {
  'proving mixed': (sheet, facts) =>
    mustMixed({
      readings: readingsOfMust(facts),
      stirredSeconds: Object.entries(facts.stirredSeconds)
        .filter(([act]) => act.startsWith('stir must'))
        .reduce((longest, [, seconds]) => Math.max(longest, seconds), 0),
      stirSeconds: STIR_MUST_SECONDS,
      range: startRangeIn(sheet, facts),
      batch: litresMixed(sheet, facts),
    }),
  'proving dry': (sheet, facts) => fermentationFinished(fermented(sheet, facts)),
  'proving gas-free': (_, facts) => gasGone(facts.judgements, lastDegassed(facts)),
  'proving clear': (sheet, facts) =>
    fallenBright({
      judgements: facts.judgements.filter(({ at }) => at >= lastStirredUp(facts)),
      clearingSince: facts.done[clearingAct(facts)],
      minimumDays: sheet.clearingDays,
      now: facts.now,
    }),
  'proving still': (sheet, facts) => still(sheet, facts),
  'box complete': (sheet, facts) =>
    boxComplete({
      missing: facts.missing['lay out sachets 1'],
      instrument: facts.instrument,
      brim: facts.brim,
      batch: sheet.batchLitres as Litres,
    }),
  'warm enough to pitch': (sheet, facts) =>
    mustWarmEnough(facts.temperatures.at(-1)?.celsius, pitchRangeOf(sheet)),
  'low enough to move': (sheet, facts) => lowEnoughToMove(sheet, facts),
  'room for foam': (_, facts) => roomForFoam(vesselNow(facts), litresNow(facts)),
  'topped up': ({ stopperMillimetres }, { gap }) => toppedUp(gap?.millimetres, stopperMillimetres),
  'surface calm': (_, facts) =>
    facts.judgements.findLast(({ what }) => what === 'rush')?.yes === false
      ? open
      : shut({ code: 'surface-rushes' }),
  'may stabilise': (sheet, facts) => stabilising(sheet, facts),
  'warm enough to fine': ({ finingAtLeast }, facts) => warmEnoughToFine(finingAtLeast as Celsius, facts),
  'may sweeten': (sheet, facts) => sweetening(sheet, facts),
  'may bottle': (sheet, facts) => {
    if (!facts.passed['proving still']) return shut({ code: 'wine-not-proven-still' });
    return passedBefore('proving still', facts) ? open : still(sheet, facts);
  },
  'bottles ready': (sheet, facts) =>
    bottlesReady({
      counted: facts.bottles,
      wanted: bottlesWanted(sheet, facts),
      closure: sheet.bottle.closure,
    }),
};

/** Litres of must while some of the water is held back for foam. */
const litresMixed = ({ batchLitres }: KitSheet, { brim }: Facts): Litres =>
  (batchLitres - heldBack(brim, batchLitres as Litres)) as Litres;

/** The sheet's start range as it reads in that must: held-back water leaves it thicker by as much. */
function startRangeIn(sheet: KitSheet, facts: Facts): StartRange {
  const { lowest, highest } = startRangeOf(sheet);
  const thicker = sheet.batchLitres / litresMixed(sheet, facts);
  const now = (gravity: Gravity): Gravity => Math.round(10_000 + (gravity - 10_000) * thicker) as Gravity;
  return { lowest: now(lowest), highest: now(highest) };
}

const fermented = (sheet: KitSheet, facts: Facts): Fermented => ({
  readings: readingsOfDryness(facts),
  pitched: facts.pitched,
  now: facts.now,
  finish: finishFor(sheet, facts),
});

/** The sheet's finish, but for what yielded: the days to a reason, the limit to a sugar test. */
function finishFor(sheet: KitSheet, facts: Facts): Finish {
  const finish = finishOf(sheet);
  const days = hasYielded('proving dry', 'too-soon', facts) ? 0 : finish.minimumDays;
  return { ...finish, minimumDays: days, limit: provenBySugarTest(facts) ? HIGHEST_GRAVITY : finish.limit };
}

/**
 * Dryness in doubt: the gate was passed, but on readings of which one was struck since, and without it they would not
 * have passed. Gives the moment of the doubt.
 */
export function drynessDoubt(sheet: KitSheet, facts: Facts): Instant | undefined {
  const passing = facts.passed['proving dry'];
  const struck = passing?.readings.flatMap((entry) => facts.struckAt[entry] ?? []);
  if (!passing || !struck || struck.length === 0) return undefined;
  const then = { ...fermented(sheet, asOf(facts, passing)) };
  const known = then.readings.filter(({ at }) => at <= passing.at);
  return fermentationFinished({ ...then, readings: known }).open
    ? undefined
    : (Math.max(...struck) as Instant);
}

function stabilising(sheet: KitSheet, facts: Facts): Verdict {
  const passing = facts.passed['proving dry'];
  const listed = new Set(stabilisersOf(sheet).map(({ id }) => id));
  const addedSince = facts.additions
    .filter(({ at, sachet }) => at > (passing?.at ?? 0) && !listed.has(sachet))
    .map(({ at, sachet }) => ({ at, sachet: printedOn(sheet, sachet) }));
  const judgedBefore = passedBefore('proving dry', facts);
  return mayStabilise({ fermented: fermented(sheet, facts), passing, addedSince, judgedBefore });
}

export const printedOn = ({ sachets }: KitSheet, sachet: string): string =>
  sachets.find(({ id }) => id === sachet)?.printed ?? sachet;

/** Sugar goes in only behind every stabiliser of the sheet, and only while dryness is not in doubt. */
function sweetening(sheet: KitSheet, facts: Facts): Verdict {
  if (!facts.passed['proving dry']) return shut({ code: 'dryness-not-proven' });
  const missing = sheet.sachets.filter(
    ({ id, contents }) => isStabiliser(contents) && contents.includes('sorbate') && !isIn(facts, id),
  );
  if (missing.length > 0)
    return shut({ code: 'stabilisers-not-all-in', missing: missing.map(({ printed }) => printed) });
  return passedBefore('proving dry', facts) ? open : fermentationFinished(fermented(sheet, facts));
}

function lowEnoughToMove(sheet: KitSheet, facts: Facts): Verdict {
  const limit = earlyMoveAt(sheet);
  const newest = standing(readingsOfFerment(facts)).at(-1);
  return limit !== undefined && newest && newest.gravity > limit
    ? shut({ code: 'not-low-enough-to-move', gravity: newest.gravity, limit })
    : open;
}

function warmEnoughToFine(atLeast: Celsius, { temperatures }: Facts): Verdict {
  const wine = temperatures.at(-1)?.celsius;
  if (wine === undefined) return shut({ code: 'wine-not-measured' });
  return wine < atLeast ? shut({ code: 'fining-too-cold', wine, atLeast }) : open;
}

function still(sheet: KitSheet, facts: Facts): Verdict {
  const baseline = facts.readings.find(({ entry }): boolean => entry === facts.baseline);
  if (toldOf(facts, 'hydrometer in the wine').length > 0) return shut({ code: 'glass-in-wine' });
  const doubt = drynessDoubt(sheet, facts);
  return wineStill({
    doubtedSince: doubt,
    baseline,
    readings: baseline ? facts.readings.filter(({ takenAt }: Reading) => takenAt >= baseline.takenAt) : [],
    judgements: facts.judgements,
    now: facts.now,
    pouredBackAt: lastPouredBack(facts),
  });
}

/** The act with which the present clearing began: a new one each time the last gate has sent the wine back. */
export const clearingAct = (facts: Facts): string =>
  `leave to clear ${String(timesReturned(facts, 'proving still') + 1)}`;
