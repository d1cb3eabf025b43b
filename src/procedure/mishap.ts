import type { MishapRules } from './mishaps/mishap-rules';
import { whileFermenting } from './mishaps/while-fermenting';
import { withBottles } from './mishaps/with-bottles';
import { withSachets } from './mishaps/with-sachets';
import { withTheWine } from './mishaps/with-the-wine';
import { withVessels } from './mishaps/with-vessels';

const ALL = { ...withSachets, ...withVessels, ...whileFermenting, ...withTheWine, ...withBottles };

/** What can be told when something went wrong. Each has its words in every language. */
export type Mishap = keyof typeof ALL;

export const MISHAPS: Readonly<Record<Mishap, MishapRules>> = ALL;

/** Mishaps by what went wrong, as they are listed. */
export type MishapGroup = 'sachets' | 'vessels' | 'fermenting' | 'wine' | 'bottles';

const idsOf = (rules: Partial<typeof ALL>) => Object.keys(rules) as Mishap[];

export const MISHAP_GROUPS: Readonly<Record<MishapGroup, readonly Mishap[]>> = {
  sachets: idsOf(withSachets),
  vessels: idsOf(withVessels),
  fermenting: idsOf(whileFermenting),
  wine: idsOf(withTheWine),
  bottles: idsOf(withBottles),
};

export const MISHAP_IDS = Object.keys(ALL) as [Mishap, ...Mishap[]];
