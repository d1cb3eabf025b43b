import { HOUR, MINUTE, nextFreeHour, onDay, type Moment } from '../../src/domain/calendar';
import type { Instant } from '../../src/domain/unit';
import { clearingAct, judge } from '../../src/procedure/judge';
import { asOf } from '../../src/procedure/facts';
import { isPhase, type Gate } from '../../src/procedure/phase';
import { remediesFor } from '../../src/workflow/remedies';
import type { Maker } from '../story/maker';
import type { Budget, Depth } from './explore';
import { liberties } from './liberties';
import { afterMishaps, mishaps } from './mishaps';
import { otherAnswers } from './other-answers';
import { evening, mustReadings, readingMoves, strikes } from './readings';

/** One thing that a maker may do next: time passes, then something is reported. */
export type Move = {
  name: string;
  at: Instant;
  deed: (maker: Maker) => void;
  /** What it takes from what a path may hold. */
  costs?: keyof Budget;
};

const now = ({ now: { at } }: Maker, name: string, deed: Move['deed']): Move => ({ name, at, deed });

const answers = (maker: Maker): Move =>
  now(maker, `answers ${maker.act?.id ?? ''}`, (of) => {
    of.answer();
  });

const finds = (what: 'gas' | 'clear' | 'rush' | 'foam', yes: boolean, at: Instant): Move => ({
  name: `finds ${what}: ${yes ? 'yes' : 'no'}`,
  at,
  deed: (of) => {
    of.judge(what, yes, of.act?.kind === 'judge' ? of.act.id : undefined);
  },
});

/** Days on which nothing is done, noticed by the next thing that is said. */
const lingers = ({ now: { at } }: Maker, days: number): Move => ({
  name: `lets ${String(days)} days go by`,
  at: (at + days * 24 * HOUR) as Instant,
  deed: (of) => {
    of.report({ type: 'noted', how: 'touch', text: 'back at it' });
  },
});

/** What may be done with the act that waits. */
function atAct(maker: Maker, { readings, answers: how }: Depth): Move[] {
  const { act, place } = maker;
  if (act?.kind === 'judge' && act.what !== 'closures') {
    const due = Math.max(act.due ?? 0, maker.now.at) as Instant;
    const early = act.what === 'clear' && due > evening(maker, 1) ? [evening(maker, 1)] : [];
    return [due, ...early].flatMap((at) => [
      finds(act.what as 'clear', true, at),
      finds(act.what as 'clear', false, at),
    ]);
  }
  if (act?.kind === 'reading' && place === 'mix') return mustReadings(maker);
  if (act?.kind === 'reading' && place !== 'top up') return readingMoves(maker, readings);
  const sealed = act?.sealed ? [lingers(maker, 4), ...readingMoves(maker, readings)] : [];
  const others = how === 'any' ? otherAnswers(maker) : [];
  return [answers(maker), ...others.map(({ name, deed }) => now(maker, name, deed)), ...sealed];
}

/** A minute later: the reading that called for it was taken before it. */
const sentBack = ({ now: { at } }: Maker, gate: Gate, clause: string): Move => ({
  name: `is sent back from ${gate}: ${clause}`,
  at: (at + MINUTE) as Instant,
  deed: (of) => {
    of.report({ type: 'sent back', how: 'touch', gate, clause });
  },
});

/** What is judged at which gate. */
const JUDGED: Partial<Record<Gate, readonly ('gas' | 'clear')[]>> = {
  'proving gas-free': ['gas'],
  'proving clear': ['clear'],
  'proving still': ['gas'],
};

/** Ways back without which there is no way on: they are always taken. */
const CALLED_FOR: ReadonlySet<string> = new Set([
  'no-baseline',
  'dryness-in-doubt',
  'under-stirred',
  'no-start-reading',
  'start-outside',
]);

/** What may be done at a gate: look, wait for its day, pass it, or take a way back while a path may take one more. */
function atGate(maker: Maker, gate: Gate, { returns, readings }: Depth): Move[] {
  const at = gate === 'proving clear' ? evening(maker, 1) : maker.now.at;
  const looks = (JUDGED[gate] ?? []).flatMap((what) => [finds(what, true, at), finds(what, false, at)]);
  const verdict = judge(gate, maker.sheet, asOf(maker.facts, maker.now));
  const failed = verdict.open ? [] : [verdict.because, ...verdict.also];
  const chosen = maker.facts.returns.filter(({ clause }) => !CALLED_FOR.has(clause)).length;
  const back = remediesFor(gate, failed).filter(({ clause }) => CALLED_FOR.has(clause) || chosen < returns);
  return [
    passes(maker, gate),
    ...itsDay(maker, gate),
    ...(gate === 'proving mixed' ? [] : readingMoves(maker, readings)),
    ...looks,
    ...back.map(({ clause }) => sentBack(maker, gate, clause)),
  ];
}

/**
 * Dryness is proven an hour after the evening's reading: so that its three days run out neither with a reading nor between
 * two sachets. What is true to the minute there is for the gate's own tests to say.
 */
const hourOf = (gate: Gate, freeHour: number): number => freeHour + (gate === 'proving dry' ? 1 : 0);

const later = (now: Moment): Moment => ({ ...now, at: (now.at + 1) as Instant });

const passes = ({ now, facts }: Maker, gate: Gate): Move => ({
  name: `passes ${gate}`,
  at: gate === 'proving dry' ? nextFreeHour(later(now), hourOf(gate, facts.freeHour)) : now.at,
  deed: (of) => {
    of.pass(gate);
  },
});

/** Passing a gate on the day that its sheet names, where that is still to come. */
function itsDay({ facts, sheet }: Maker, gate: Gate): Move[] {
  const days: Partial<Record<Gate, [since: Moment | undefined, days: number]>> = {
    'proving dry': [facts.pitched, sheet.dry.minimumDays],
    'proving clear': [facts.done[clearingAct(facts)], sheet.clearingDays],
  };
  const [since, count] = days[gate] ?? [undefined, 0];
  const day = since && onDay(since, count, hourOf(gate, facts.freeHour));
  if (day === undefined || day <= facts.now.at) return [];
  return [
    {
      name: `waits for its day and passes ${gate}`,
      at: day,
      deed: (of) => {
        of.pass(gate);
      },
    },
  ];
}

/** Everything that is worth doing where the batch stands, as far as what a path may hold is not spent. */
export function movesAt(maker: Maker, depth: Depth, left: Budget): Move[] {
  const { place } = maker;
  return [
    ...(isPhase(place) ? atAct(maker, depth) : atGate(maker, place as Gate, depth)),
    ...(depth.mishaps > 0 ? afterMishaps(maker) : []),
    ...(left.corrections > 0 ? strikes(maker) : []),
    ...(left.liberties > 0 ? liberties(maker) : []),
    ...(left.mishaps > 0 ? mishaps(maker) : []),
  ];
}
