/** One word as it was heard, in seconds from the start of the utterance. */
export type Segment = { word: string; from: number; to: number; score: number };

/** What an utterance was heard as: always a sentence of the grammar, decoys and all. */
export type Hearing = {
  words: string;
  segments: readonly Segment[];
  /** The engine's log score of the best path; lower for longer utterances. */
  score: number;
  /** How much better the sounds fit the grammar than what it was set against, a tenth of a second. Below 0: worse. */
  margin?: number;
  /** The same from its first word to its last: what differs from a phrase in one word shows here. */
  inside?: number;
  /** The words that what it was set against would make of the same sounds. */
  against?: readonly Segment[];
  seconds: number;
};

/** Turns one whole utterance into words. */
export type Decoder = {
  /**
   * What may be heard from now on, as JSGF with one public rule. `against` is a second grammar that each utterance is
   * measured by as well, for the margin: say the decoys alone.
   */
  setGrammar: (grammar: string, against?: string) => void;
  /** `samples` at 16 kHz. Nothing where no sentence of the grammar fits. */
  decode: (samples: Int16Array) => Hearing | undefined;
};

/** What a decoder works on. */
export const DECODED_RATE = 16_000;

/** Seconds. Whoever talks longer without a pause says more than a phrase: that is not decoded at all. */
export const LONGEST = 4.5;
