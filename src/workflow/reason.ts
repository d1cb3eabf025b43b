import type { Problem } from '../domain/problem';

const SHORTEST = 8;

/** A reason stays on the batch for good, so that somebody can read it: a letter or a dot is none. */
export const tooShort = (reason: string): Problem | undefined =>
  reason.replace(/[^\p{L}\p{N}]/gu, '').length < SHORTEST ? { code: 'reason-too-short' } : undefined;
