/** The sentences of a line, one utterance each: long utterances are cut off by some devices. */
export const sentences = (line: string, language: string): string[] =>
  [...new Intl.Segmenter(language, { granularity: 'sentence' }).segment(line)]
    .map(({ segment }) => segment.trim())
    .filter((sentence) => sentence !== '');
