import { comesAfter, PHASES, type Phase } from '../../src/procedure/phase';
import {
  isBottled,
  litresNow,
  nthBottling,
  toldOf,
  type Addition,
  type Facts,
} from '../../src/procedure/facts';
import { aliveSince } from '../../src/procedure/phases/ferment';
import { readingsThatCount } from './dryness';
import { clearing } from './clearing';
import { hour } from './hour';
import type { Known } from './known';
import { evening } from './readings';
import { remaining } from './remaining';
import { resting } from './resting';

/**
 * What tells one state from another once something may have gone wrong: what is in the wine, how much of it there is,
 * and the work that lies behind, for the wine may come back to it. Until then nothing of that differs, and this is nothing.
 */
export function goneWrong(known: Known, corrections: number, mishaps: number): unknown {
  const { facts, place } = known;
  if (mishaps === 0 && facts.mishaps.length === 0) return undefined;
  return [
    facts.additions.map(addition).toSorted(),
    Math.round(litresNow(facts) * 1000),
    facts.vessel,
    place === 'pitch' && hour(facts),
    'siphon off 1' in facts.done,
    facts.instrument !== undefined,
    toldOf(facts, 'hydrometer in the wine').length > 0,
    toldOf(facts, 'sediment stirred up').length > 0 && clearing(supposing(known, { mishaps: [] })),
    [nthBottling(facts), isBottled(facts), facts.filled],
    PHASES.filter((phase) => comesAfter(phase, 'prepare')).map((phase) => remaining(known, phase)),
    mishaps > 0 && yetToCome(known, corrections),
  ];
}

const ITS_OWN: ReadonlySet<string> = new Set<Phase>(['mix', 'stabilise', 'fine']);

const addition = ({ sachet, phase, unguarded }: Addition): string =>
  `${sachet} ${ITS_OWN.has(phase) ? phase : 'elsewhere'} ${unguarded ? 'unguarded' : ''}`;

/** What the next mishap may bring back: which readings count, and would, if the sweetening pack were not in or not guarded. */
function yetToCome(known: Known, corrections: number): unknown {
  const { facts } = known;
  const { additions } = facts;
  const isSweet = ({ contents }: Addition): boolean => contents.includes('sweetening pack');
  const others: Addition[][] = additions.some(isSweet)
    ? [
        additions.filter((each) => !isSweet(each)),
        additions.map((each) => (isSweet(each) ? { ...each, unguarded: true } : each)),
      ]
    : [];
  return [
    hour(facts),
    aliveSince(facts) !== undefined,
    [additions, ...others].map((added) =>
      readingsThatCount(supposing(known, { additions: added }), corrections),
    ),
    resting(facts, corrections),
    toldLately(facts),
  ];
}

const EVENINGS = [1, 2, 3, 4, 5, 6, 7, 8];

/** What cannot be told once more yet, and on how many evenings to come. */
const toldLately = (facts: Facts): unknown =>
  facts.mishaps
    .filter(({ struck, lookAgain = 0 }) => !struck && lookAgain > facts.now.at)
    .map(({ mishap, sachet = '', litres = '', lookAgain = 0 }) =>
      [mishap, sachet, litres, EVENINGS.filter((nth) => evening(facts, nth) < lookAgain).length].join(' '),
    )
    .toSorted();

const supposing = ({ sheet, facts, place }: Known, otherwise: Partial<Facts>): Known => ({
  sheet,
  place,
  facts: { ...facts, ...otherwise },
});
