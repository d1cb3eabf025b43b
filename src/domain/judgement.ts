import type { Moment } from './calendar';

/** What is judged by eye, ear or hand. `yes` answers the question in the comment. */
export type Judged =
  | 'foam' // is there foam, or a ring of it?
  | 'rush' // did a knock of the surface raise a rush of gas?
  | 'gas' // was the shaken wine livelier than the plain-water control?
  | 'clear' // is print readable through the wine, or the torch beam free of milk?
  | 'closures'; // has any closure risen or leaked?

/** One answer of the maker's, and when it was given. */
export type Judgement = Moment & { entry: number; what: Judged; yes: boolean };

/** The answers to one question since a moment, oldest first. */
export const answersSince = (judgements: readonly Judgement[], what: Judged, since: number): Judgement[] =>
  judgements.filter((judgement) => judgement.what === what && judgement.at >= since);
