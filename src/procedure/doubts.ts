import { standing, type Reading } from '../domain/reading';
import type { Instant } from '../domain/unit';
import { isStabiliser } from './contents';
import type { Facts } from './facts';
import { drynessDoubt, judge } from './judge';
import type { KitSheet } from './kit-sheet';
import { COURSE, type Gate, type Place } from './phase';
import { readingsOfFerment, readingsOfMust } from './selections';

/** The gates that are passed on readings. */
export type DoubtedGate = Extract<Gate, 'proving mixed' | 'proving dry' | 'proving still'>;

/** Where the wine is when a gate behind it falls into doubt. */
export type DoubtedWhen =
  | 'before the yeast'
  | 'after the yeast'
  | 'before stabilising'
  | 'after stabilising'
  | 'without stabiliser'
  | 'before bottling'
  | 'after bottling';

/** A gate that was passed on a reading struck since, and would not have been without it. */
export type Doubt = {
  gate: DoubtedGate;
  since: Instant;
  when: DoubtedWhen;
  struck: Reading;
  /** The newest reading of the same kind that stands, where there is one. */
  instead: Reading | undefined;
};

/** Every gate in doubt, in the order of the procedure. Of a wine that was thrown away nothing is asked. */
export const doubts = (sheet: KitSheet, facts: Facts, place: Place): Doubt[] =>
  place === 'discarded'
    ? []
    : DOUBTED.flatMap((gate) => {
        const since = SINCE[gate](sheet, facts);
        const struck = since === undefined ? undefined : lastStruck(gate, facts);
        return since === undefined || struck === undefined
          ? []
          : [{ gate, since, when: WHEN[gate](facts, place), struck, instead: newest(gate, facts) }];
      });

const DOUBTED: readonly DoubtedGate[] = ['proving mixed', 'proving dry', 'proving still'];

const SINCE: Record<DoubtedGate, (sheet: KitSheet, facts: Facts) => Instant | undefined> = {
  'proving mixed': (sheet, facts) => unlessOpenNow('proving mixed', sheet, facts),
  'proving dry': unlessRestedSince,
  'proving still': (sheet, facts) => unlessOpenNow('proving still', sheet, facts),
};

/** A reading taken since may have answered the question already. */
function unlessOpenNow(gate: DoubtedGate, sheet: KitSheet, facts: Facts): Instant | undefined {
  const struck = lastStruck(gate, facts);
  return struck && !judge(gate, sheet, facts).open ? facts.struckAt[struck.entry] : undefined;
}

/** A week's rest on a new baseline answers a doubt about dryness: the last gate was passed after it. */
function unlessRestedSince(sheet: KitSheet, facts: Facts): Instant | undefined {
  const since = drynessDoubt(sheet, facts);
  return since !== undefined && since >= (facts.passed['proving still']?.at ?? 0) ? since : undefined;
}

/** Of the readings that a gate was passed on, the one that was struck last. */
function lastStruck(gate: DoubtedGate, { passed, readings, struckAt }: Facts): Reading | undefined {
  const used = new Set(passed[gate]?.readings);
  return readings
    .filter(({ entry, struck }) => struck && used.has(entry))
    .toSorted((a, b) => (struckAt[a.entry] ?? 0) - (struckAt[b.entry] ?? 0))
    .at(-1);
}

function newest(gate: DoubtedGate, facts: Facts): Reading | undefined {
  const of = gate === 'proving mixed' ? readingsOfMust(facts) : readingsOfFerment(facts);
  return standing(gate === 'proving still' ? facts.readings : of).at(-1);
}

const WHEN: Record<DoubtedGate, (facts: Facts, place: Place) => DoubtedWhen> = {
  'proving mixed': ({ pitched }) => (pitched ? 'after the yeast' : 'before the yeast'),
  'proving dry': (facts, place) => {
    if (isBottled(facts)) return 'after bottling';
    if (facts.additions.some(({ contents }) => isStabiliser(contents))) return 'after stabilising';
    return rank(place) > rank('stabilise') ? 'without stabiliser' : 'before stabilising';
  },
  'proving still': (facts) => (isBottled(facts) ? 'after bottling' : 'before bottling'),
};

const rank = (place: Place): number => (COURSE as readonly Place[]).indexOf(place);

const isBottled = ({ done, filled }: Facts): boolean =>
  filled !== undefined || Object.keys(done).some((act) => act.startsWith('fill and close'));
