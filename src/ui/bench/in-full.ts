import type { Offer } from './offer';

/** Yes and no with their whole answers on the pads; the short phrases still work. */
export const inFull = (offers: readonly Offer[], words: { yes: string; no: string }): Offer[] =>
  offers.map((each) =>
    each.command === 'yes' || each.command === 'no'
      ? { ...each, phrase: words[each.command], says: each.phrase }
      : each,
  );
