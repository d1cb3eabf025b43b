import type { Moment } from '../calendar';

/** The edition of the house rules that this release judges by. It grows when a clause changes. */
export const RULES = 2;

/** That a gate was passed is a fact: when, under which rules, and on which readings (their places in the journal). */
export type Passing = Moment & { rules: number; readings: readonly number[] };
