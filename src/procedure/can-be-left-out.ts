import { isIn, type Facts } from './facts';
import type { KitSheet, Sachet } from './kit-sheet';

/** Whether a sachet may stay in its box: yeast never, nothing that is in the wine already, and nothing twice. */
export const canBeLeftOut = ({ sachets }: KitSheet, facts: Facts, { id }: Pick<Sachet, 'id'>): boolean =>
  sachets.some(
    (sachet) =>
      sachet.id === id && !sachet.contents.includes('yeast') && !isIn(facts, id) && !(id in facts.leftOut),
  );
