import { isAlways } from './guide-offers';
import type { Offer } from './offer';

export type PadLines = {
  /** What answers, and what stands at any time, each with the place of its first in the order of the keys. */
  lines: readonly { from: number; of: readonly Offer[] }[];
  /** Two or three answers of equal weight get the height of a main pad. */
  tall: boolean;
  /** One other answer stands beside the main one; more of them stand below it. */
  beside: boolean;
  /** More than fill one line of a wide bench. */
  many: boolean;
  /** More than fill two lines of a phone, where the rarer ones are folded anyway. */
  full: boolean;
};

const FEW_ANSWERS = 2;
const EQUALS = 3;
const FILLS_A_LINE = 6;
const FILLS_A_PHONE = 5;

/** A way on that is shown and named, and not to be had yet. */
export const isShut = ({ command, disabled }: Offer) => disabled === true && command === undefined;

/**
 * Which pads stand together. Answers and what may be said at any time do not share a line that is too short for all of them;
 * where there are many answers, a way that is still shut gives its place up to them.
 */
export function padLines(offers: readonly Offer[]): PadLines {
  const shown = offers.filter(({ folded }) => folded !== 'always');
  const answers = shown.filter((each) => !isAlways(each));
  const found = offers.findIndex((each) => isAlways(each) || (answers.length > FEW_ANSWERS && isShut(each)));
  const turn = found < 0 ? offers.length : found;
  const tall = answers.length <= EQUALS && answers.every(({ main }) => !main);
  return {
    lines: [
      { from: 0, of: offers.slice(0, turn) },
      { from: turn, of: offers.slice(turn) },
    ].filter(({ of }) => of.length > 0),
    tall,
    beside: !tall && turn === 2,
    many: shown.length > FILLS_A_LINE,
    full: shown.filter(({ folded }) => folded === undefined).length > FILLS_A_PHONE,
  };
}
