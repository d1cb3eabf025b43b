import { HOUR } from '../../src/domain/calendar';
import { RULES } from '../../src/domain/gates/passing';
import type { Gravity } from '../../src/domain/gravity';
import { standing } from '../../src/domain/reading';
import type { Celsius, Instant } from '../../src/domain/unit';
import { finishOf } from '../../src/procedure/limits';
import { isPhase, type Gate, type Place } from '../../src/procedure/phase';
import { REMEDIES } from '../../src/workflow/remedies';
import type { Maker } from '../story/maker';

/** One thing that a maker may do next: some hours pass, then something is reported. */
export type Move = { name: string; hours: number; deed: (maker: Maker) => void; corrects?: boolean };

type ReadingMove = {
  name: string;
  above: number;
  wine?: number;
  degassed?: boolean;
  hoursAgo?: number;
  rare?: true;
};

/** Readings that between them make every clause of the dryness and stillness gates true and false. */
const READINGS: ReadingMove[] = [
  { name: 'dry', above: -20 },
  { name: 'dry, a shade lower', above: -28 },
  { name: 'dry, clearly lower', above: -40, rare: true },
  { name: 'above the limit', above: 30 },
  { name: 'dry in cold wine', above: -20, wine: 14 },
  { name: 'dry with gas', above: -20, degassed: false, rare: true },
  { name: 'dry, told late', above: -20, hoursAgo: 20 },
];

/** How long after the last event a reading comes: within a day of another, and two days after. */
const WAITS: Record<string, readonly number[]> = { dry: [25, 49] };
const USUAL_WAIT = [49];

const reading = (maker: Maker, { above, wine = 22, degassed = true, hoursAgo = 0 }: ReadingMove): void => {
  const act = maker.act?.kind === 'reading' ? { act: maker.act.id } : {};
  maker.read({
    ...act,
    reading: (finishOf(maker.sheet).limit + above) as Gravity,
    sampleCelsius: 20 as Celsius,
    wineCelsius: wine as Celsius,
    degassed,
    ...(hoursAgo > 0
      ? { takenAt: Math.max(maker.now.at - hoursAgo * HOUR, maker.facts.begun.at) as Instant }
      : {}),
  });
};

const READ_AT: ReadonlySet<Place> = new Set<Place>([
  'ferment',
  'proving dry',
  'stabilise',
  'proving still',
  'bottle',
]);
/** Ways back that one path takes. */
const MOST_RETURNS = 1;

const readingMoves = (maker: Maker, thorough: boolean): Move[] =>
  READINGS.filter(({ rare }) => thorough || rare !== true).flatMap((told) =>
    (WAITS[told.name] ?? USUAL_WAIT).map((hours) => ({
      name: `${String(hours)} h later reads ${told.name}`,
      hours,
      deed: () => {
        reading(maker, told);
      },
    })),
  );

const answer: Move = {
  name: 'answers the act',
  hours: 0,
  deed: (maker) => {
    maker.answer();
  },
};

const judging = (what: 'gas' | 'clear' | 'rush' | 'foam', yes: boolean, hours = 0): Move => ({
  name: `finds ${what}: ${yes ? 'yes' : 'no'}`,
  hours,
  deed: (maker) => {
    maker.judge(what, yes, maker.act?.kind === 'judge' ? maker.act.id : undefined);
  },
});

const passing = (hours: number): Move => ({
  name: `${String(hours)} h later goes on`,
  hours,
  deed: (maker) => {
    maker.report({
      type: 'gate passed',
      how: 'touch',
      gate: maker.place as Gate,
      rules: RULES,
      readings: [],
    });
  },
});

const sentBack = (gate: Gate, clause: string): Move => ({
  name: `is sent back: ${clause}`,
  hours: 0,
  deed: (maker) => {
    maker.report({ type: 'sent back', how: 'touch', gate, clause });
  },
});

const strikes = (maker: Maker): Move[] =>
  standing(maker.facts.readings).map(({ entry }) => ({
    name: `strikes reading ${String(entry)}`,
    hours: 0,
    corrects: true,
    deed: () => {
      maker.report({ type: 'reading struck', how: 'touch', entry, reason: 'misread it' });
    },
  }));

/** What is judged at which gate. */
const JUDGED: Partial<Record<Gate, readonly ('gas' | 'clear')[]>> = {
  'proving gas-free': ['gas'],
  'proving clear': ['clear'],
  'proving still': ['gas'],
};

/** Everything that is worth doing where the batch stands. */
export function movesAt(maker: Maker, thorough: boolean): Move[] {
  const { place, act, facts } = maker;
  const reads = READ_AT.has(place) ? readingMoves(maker, thorough) : [];
  const late: Move = {
    name: 'waits four days, then answers',
    hours: 96,
    deed: (of) => {
      of.answer();
    },
  };
  if (isPhase(place)) {
    if (act?.kind === 'judge' && act.what !== 'closures')
      return [judging(act.what, true, 24), judging(act.what, false, 24), ...strikes(maker)];
    if (act?.kind === 'reading' && place === 'ferment') return [...reads, ...strikes(maker)];
    return [answer, ...(act?.sealed ? [late, ...reads] : []), ...strikes(maker)];
  }
  const gate = place as Gate;
  const judged = JUDGED[gate] ?? [];
  return [
    passing(0),
    passing(24 * 40),
    ...reads,
    ...judged.flatMap((what) => [judging(what, true, 24), judging(what, false, 24)]),
    ...REMEDIES.filter((remedy) => remedy.gate === gate && facts.returns.length < MOST_RETURNS).map(
      ({ clause }) => sentBack(gate, clause),
    ),
    ...strikes(maker),
  ];
}
