import { doubtAsked } from './doubt';
import type { GuideContext } from './guide-context';
import { readBack } from './read-back';

/** The question that stands while something is read back. */
export function questionOf({ draft, doubt, situation, words, at }: GuideContext): string | undefined {
  if (doubt) return doubtAsked(doubt, words.text, words.formats);
  return draft && situation && readBack(draft, words, situation, at);
}
