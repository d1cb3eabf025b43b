/** The sentences of a line, one utterance each: long utterances are cut off by some devices. */
export const sentences = (line: string, language: string): string[] =>
  [...segmenterOf(language).segment(line)]
    .map(({ segment }) => segment.trim())
    .filter((sentence) => sentence !== '');

/** Slow to make, and the same for every line. */
const segmenters = new Map<string, Intl.Segmenter>();
function segmenterOf(language: string): Intl.Segmenter {
  const known = segmenters.get(language) ?? new Intl.Segmenter(language, { granularity: 'sentence' });
  segmenters.set(language, known);
  return known;
}
