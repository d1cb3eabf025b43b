import type { GuideContext } from './guide-context';
import type { Situation } from './situation';

/** Nobody has answered for so long: who was telling something is no longer there. */
const GONE = 60_000;

/**
 * Whether the maker is in the middle of telling something that time alone would sweep away: an act that falls due, or a
 * clause of a gate that clears, can wait until it is told. What the batch itself has become since cannot.
 */
export function isTelling(
  { situation, dictation, draft, saying, since, at }: GuideContext,
  next: Situation,
): boolean {
  const tells = dictation !== undefined || draft?.type === 'reading taken';
  const isThere = saying !== undefined || at - since < GONE;
  return tells && isThere && next.place === situation?.place && next.entries === situation.entries;
}
