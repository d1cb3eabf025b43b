import type { Formats } from '../text/formats';
import type { BenchText, Text } from '../text/text';

/** Words, and how this maker's numbers are said. */
export type Spoken = { text: BenchText; formats: Formats };

/** With the words of what can go wrong, which are fetched while the first act is done. */
export type Words = Spoken & { whole: () => Text | undefined };

/** Before its words have come nothing that went wrong can be told: neither on its page nor to the ear. */
export function whatHappened({ whole }: Words): Text['whatHappened'] {
  const text = whole();
  if (!text) throw new Error('it was told what happened before the words for it had come');
  return text.whatHappened;
}
