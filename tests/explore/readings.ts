import { HOUR, hoursAfter, nextFreeHour } from '../../src/domain/calendar';
import type { Gravity } from '../../src/domain/gravity';
import { standing } from '../../src/domain/reading';
import type { Celsius, Instant } from '../../src/domain/unit';
import type { Facts } from '../../src/procedure/facts';
import { finishOf } from '../../src/procedure/limits';
import type { Place } from '../../src/procedure/phase';
import type { Maker } from '../story/maker';
import type { Move } from './moves';

type Told = {
  name: string;
  /** Ten-thousandths above the sheet's limit; at the last gate, above the baseline. */
  above: number;
  wine?: number;
  degassed?: boolean;
  hoursAgo?: number;
  from?: Readings;
};

/**
 * What may be read: what is dry or is not; that between it every clause of the gates is seen failing and holding; and
 * all there is.
 */
export const READINGS = ['dry or not', 'every clause', 'every reading'] as const;
export type Readings = (typeof READINGS)[number];

const within = (told: Told, readings: Readings): boolean =>
  READINGS.indexOf(told.from ?? 'dry or not') <= READINGS.indexOf(readings);

const DRY: Told = { name: 'dry', above: -20 };
const ABOVE: Told = { name: 'above the limit', above: 30 };
const COLD: Told = { name: 'dry in cold wine', above: -20, wine: 14, from: 'every clause' };

const PROVING: readonly Told[] = [
  DRY,
  { name: 'dry, a shade lower', above: -28, from: 'every clause' },
  { name: 'dry, clearly lower', above: -40, from: 'every reading' },
  ABOVE,
  COLD,
  { name: 'dry with gas', above: -20, degassed: false, from: 'every reading' },
  { name: 'dry, told a day late', above: -20, hoursAgo: 24, from: 'every clause' },
];
const ON_THE_WAY: readonly Told[] = [DRY, ABOVE, COLD];
const STILL_SWEET: Told = { name: 'still sweet', above: 400 };

/** The same for the last gate. */
const SINCE_BASELINE: readonly Told[] = [
  { name: 'as at the baseline', above: 0 },
  { name: 'clearly lower than the baseline', above: -20 },
  { name: 'clearly higher than the baseline', above: 20, from: 'every clause' },
  { name: 'as at the baseline, told a day late', above: 0, hoursAgo: 24, from: 'every clause' },
];

const PROVING_AT: ReadonlySet<Place> = new Set<Place>(['proving dry', 'stabilise']);
const SINCE_BASELINE_AT: ReadonlySet<Place> = new Set<Place>(['proving still', 'bottle']);

/** The maker's free hour, so many evenings from now: so that readings lie whole days apart. */
export const evening = ({ now }: Pick<Facts, 'now'>, nth: number): Instant =>
  hoursAfter(nextFreeHour({ ...now, at: (now.at + 1) as Instant }, 18), (nth - 1) * 24);

/** What the glass may show where the batch stands, and when it is looked at. */
export function readingMoves(maker: Maker, readings: Readings): Move[] {
  const { place } = maker;
  if (SINCE_BASELINE_AT.has(place)) return sinceBaseline(maker, readings);
  if (place === 'ferment') return onTheWay(maker, readings);
  if (!PROVING_AT.has(place)) return [];
  const { limit } = finishOf(maker.sheet);
  return PROVING.filter((told) => within(told, readings)).flatMap((told) =>
    [evening(maker, 1), evening(maker, 2)].map((at) => reading(at, limit, told, maker)),
  );
}

/** On the evening of its day: whatever else can be read is read at the gate, where any reading may follow any other. */
function onTheWay(maker: Maker, readings: Readings): Move[] {
  const due = Math.max(maker.act?.due ?? 0, evening(maker, 1)) as Instant;
  const at = nextFreeHour({ ...maker.now, at: due }, 18);
  const told = maker.act?.step === 'read for the move' ? [...ON_THE_WAY, STILL_SWEET] : ON_THE_WAY;
  return told
    .filter((each) => within(each, readings))
    .map((each) => reading(at, finishOf(maker.sheet).limit, each, maker));
}

/** Before its week is over and after it; where nothing but dry or not is told, only after it. */
function sinceBaseline(maker: Maker, readings: Readings): Move[] {
  const baseline = maker.facts.readings.find(({ entry }) => entry === maker.facts.baseline);
  if (!baseline) return [];
  const week = hoursAfter(baseline.takenAt, 7 * 24);
  const rested = (from: Instant): Instant =>
    nextFreeHour({ ...maker.now, at: Math.max(week, from) as Instant }, 18);
  const early = readings !== 'dry or not';
  const times = early ? [evening(maker, 1), rested(maker.now.at)] : [rested(evening(maker, 1))];
  return SINCE_BASELINE.filter((each) => within(each, readings)).flatMap((each) =>
    [...new Set(times)].map((at) => reading(at, baseline.read, each, maker)),
  );
}

function reading(at: Instant, from: Gravity, told: Told, { now }: Maker): Move {
  const { name, above, wine = 22, degassed = true, hoursAgo = 0 } = told;
  return {
    name: `${String(Math.round((at - now.at) / HOUR))} h later reads ${name}`,
    at,
    deed: (maker) => {
      const takenAt = Math.max(maker.now.at - hoursAgo * HOUR, maker.facts.begun.at) as Instant;
      maker.read({
        ...(maker.act?.kind === 'reading' ? { act: maker.act.id } : {}),
        reading: (from + above) as Gravity,
        sampleCelsius: 20 as Celsius,
        wineCelsius: wine as Celsius,
        degassed,
        ...(hoursAgo > 0 ? { takenAt } : {}),
      });
    },
  };
}

/** The start gravity: as it should be, too thin, and too thick. */
export const mustReadings = (maker: Maker): Move[] =>
  [0, -200, 200].map((off) => ({
    name: off === 0 ? 'reads the must' : `reads the must off by ${String(off)}`,
    at: maker.now.at,
    deed: (of) => {
      of.read({ act: of.act?.id, reading: (of.shown() + off) as Gravity });
    },
  }));

/** One more reading that says what the newest sound one said. */
export function readAgain(maker: Maker, at: Instant): void {
  maker.waitUntil(Math.max(at, evening(maker, 1)) as Instant);
  maker.read();
}

/** Striking any reading that stands, told apart by how many were taken since. */
export const strikes = (maker: Maker): Move[] =>
  standing(maker.facts.readings)
    .toReversed()
    .map(({ entry }, back) => ({
      name: `strikes the reading ${back === 0 ? 'taken last' : `${String(back)} before the last`}`,
      at: maker.now.at,
      costs: 'corrections',
      deed: (of) => {
        of.report({ type: 'reading struck', how: 'touch', entry, reason: 'misread it' });
      },
    }));
