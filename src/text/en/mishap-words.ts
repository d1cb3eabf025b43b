/** Something that went wrong, in words. What can hurt someone stands in `cautions`, and is shown and said first. */
export type MishapWords = {
  title: string;
  /** How a maker says it. */
  spoken: string;
  /** How to tell that it is this, and nothing else. */
  tell: string;
  lost: string;
  reversible: string;
  cautions?: readonly string[];
  /** What to do now, in order. */
  now: readonly string[];
  /** When to look again, and for what. */
  again: string;
  /** What is asked on that day. “All is well” has to be an answer. */
  look: string;
  /** Where good sources differ, and what the house does. */
  disagree?: string;
  /** Its line in the journal. */
  entry: string;
};
