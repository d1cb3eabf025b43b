import { tell } from '../text';
import type { Sentences } from '../sentences';
import { whatIsWrong } from './counted';
import { notAsTold } from './not-as-told';
import { firstProblems } from './problems-first';
import { later } from './problems-later';
import { misread } from './problems-misread';
import { notFinished } from './problems-not-finished';
import { notYet } from './problems-not-yet';
import { outOfPlace } from './problems-out-of-place';
import { unreadable } from './problems-unreadable';

/** The sentence for every problem: what is wrong, in numbers, and what to do next. Never whose fault it was. */
export const problems: Sentences = {
  ...firstProblems,
  ...misread,
  ...notFinished,
  ...notYet,
  ...later,
  ...outOfPlace,
  ...notAsTold,
  ...unreadable,

  'journal-mismatch': ({ entry, type, reason }, f) =>
    `Entry ${String(entry)} of the record (${type}) does not fit what came before it. ${whatIsWrong(tell({ problems }, reason, f))} Everything before it is safe: export the batch, and go on from there.`,
};
