import { onDay } from '../domain/calendar';
import type { Instant } from '../domain/unit';
import type { Interval } from '../domain/sums/ground/interval';
import { bottlesWanted } from './bottles-wanted';
import type { Contents } from './contents';
import { isBottled, nthBottling, type Facts, type Override } from './facts';
import { printedOn } from './judge';
import { ALLERGENS, type Allergen, type KitSheet } from './kit-sheet';
import { FIRST_TASTE_DAYS } from './phases/after';
import { strength } from './strength';

/** What a bottle should say in a year, when nobody remembers. */
export type Label = {
  /** Bottles there are, or will be. */
  bottles: number;
  bottled?: Instant;
  /** The first taste; before it a young wine is still closed. */
  restUntil?: Instant;
  /** % vol. */
  alcohol?: Interval;
  allergens: readonly Allergen[];
  overrides: readonly Override[];
  /** Printed names of sachets that were left out, each with the reason. */
  leftOut: readonly { printed: string; reason: string }[];
};

/** What is one by what it is, whether or not the sheet says so. */
const ALLERGEN_OF: Partial<Record<Contents, Allergen>> = {
  sulphite: 'sulphite',
  'shellfish finings': 'shellfish',
  'fish finings': 'fish',
};

/** What the labels of a batch say: of allergens only those that went in, and everything that was decided against the sheet. */
export function labelOf(sheet: KitSheet, facts: Facts): Label {
  const bottled = isBottled(facts) ? facts.done[`fill and close ${String(nthBottling(facts))}`] : undefined;
  const alcohol = strength(sheet, facts)?.alcohol;
  return {
    bottles: facts.filled ?? bottlesWanted(sheet, facts),
    ...(bottled && { bottled: bottled.at, restUntil: onDay(bottled, FIRST_TASTE_DAYS, facts.freeHour) }),
    ...(alcohol && { alcohol }),
    allergens: allergensIn(sheet, facts),
    overrides: facts.overrides,
    leftOut: Object.entries(facts.leftOut).map(([id, reason]) => ({ printed: printedOn(sheet, id), reason })),
  };
}

/** What the sachets that went in say of themselves, and what they are by their contents. */
function allergensIn({ sachets }: KitSheet, { additions }: Facts): Allergen[] {
  const told = additions.flatMap(({ sachet, contents }) => [
    sachets.find(({ id }) => id === sachet)?.allergen,
    ...contents.map((each) => ALLERGEN_OF[each]),
  ]);
  return ALLERGENS.filter((each) => told.includes(each));
}
