import type { Facts } from './facts';
import type { KitSheet, Sachet } from './kit-sheet';

/** The sachets that should lie there empty: those that went in since wrappers were last counted. */
export function wrappersDue({ sachets }: KitSheet, { additions, wrappersCounted }: Facts): Sachet[] {
  const used = new Set(additions.filter(({ entry }) => entry > wrappersCounted).map(({ sachet }) => sachet));
  return sachets.filter(({ id }) => used.has(id));
}
