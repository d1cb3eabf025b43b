import type { Problem } from './problem';

/** What a door gives back: the parsed value, or what is wrong in a way the maker can act on. */
export type Result<Value> = { ok: true; value: Value } | { ok: false; problem: Problem };

/** A value that passed its door. */
export const accepted = <Value>(value: Value): Result<Value> => ({ ok: true, value });

/** A refusal at a door, with its reason. */
export const refused = (problem: Problem): Result<never> => ({ ok: false, problem });
