import { HOUR, hoursAfter, nextFreeHour } from '../../src/domain/calendar';
import type { Gravity } from '../../src/domain/gravity';
import { standing } from '../../src/domain/reading';
import type { Celsius, Instant } from '../../src/domain/unit';
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
  /** Fails no clause that another reading does not fail too. */
  rare?: true;
};

const DRY: Told = { name: 'dry', above: -20 };
const ABOVE: Told = { name: 'above the limit', above: 30 };
const COLD: Told = { name: 'dry in cold wine', above: -20, wine: 14 };

/** Readings that between them make every clause of the dryness gate true and false. */
const PROVING: readonly Told[] = [
  DRY,
  { name: 'dry, a shade lower', above: -28 },
  { name: 'dry, clearly lower', above: -40, rare: true },
  ABOVE,
  COLD,
  { name: 'dry with gas', above: -20, degassed: false, rare: true },
  { name: 'dry, told a day late', above: -20, hoursAgo: 24 },
];
const ON_THE_WAY: readonly Told[] = [DRY, ABOVE, COLD];
const STILL_SWEET: Told = { name: 'still sweet', above: 400 };

/** The same for the last gate. */
const SINCE_BASELINE: readonly Told[] = [
  { name: 'as at the baseline', above: 0 },
  { name: 'clearly lower than the baseline', above: -20 },
  { name: 'clearly higher than the baseline', above: 20 },
  { name: 'as at the baseline, told a day late', above: 0, hoursAgo: 24 },
];

const PROVING_AT: ReadonlySet<Place> = new Set<Place>(['proving dry', 'stabilise']);
const SINCE_BASELINE_AT: ReadonlySet<Place> = new Set<Place>(['proving still', 'bottle']);

/** The maker's free hour, so many evenings from now: so that readings lie whole days apart. */
export const evening = ({ now }: Maker, nth: number): Instant =>
  hoursAfter(nextFreeHour({ ...now, at: (now.at + 1) as Instant }, 18), (nth - 1) * 24);

/** What the glass may show where the batch stands, and when it is looked at. */
export function readingMoves(maker: Maker, thorough: boolean): Move[] {
  const { place } = maker;
  if (SINCE_BASELINE_AT.has(place)) return sinceBaseline(maker);
  if (place === 'ferment') return onTheWay(maker);
  if (!PROVING_AT.has(place)) return [];
  const { limit } = finishOf(maker.sheet);
  return PROVING.filter(({ rare }) => thorough || !rare).flatMap((told) =>
    [evening(maker, 1), evening(maker, 2)].map((at) => reading(at, limit, told, maker)),
  );
}

/** On its day: whatever else can be read is read at the gate, where any reading may follow any other. */
function onTheWay(maker: Maker): Move[] {
  const at = Math.max(maker.act?.due ?? 0, evening(maker, 1)) as Instant;
  const told = maker.act?.step === 'read for the move' ? [...ON_THE_WAY, STILL_SWEET] : ON_THE_WAY;
  return told.map((each) => reading(at, finishOf(maker.sheet).limit, each, maker));
}

function sinceBaseline(maker: Maker): Move[] {
  const baseline = maker.facts.readings.find(({ entry }) => entry === maker.facts.baseline);
  if (!baseline) return [];
  const week = hoursAfter(baseline.takenAt, 7 * 24);
  const rested = nextFreeHour({ ...maker.now, at: Math.max(week, maker.now.at) as Instant }, 18);
  return SINCE_BASELINE.flatMap((each) =>
    [...new Set([evening(maker, 1), rested])].map((at) => reading(at, baseline.read, each, maker)),
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
      corrects: true,
      deed: (of) => {
        of.report({ type: 'reading struck', how: 'touch', entry, reason: 'misread it' });
      },
    }));
