import type { Maker } from '../story/maker';

/** What is known of a batch, and where it stands. */
export type Known = Pick<Maker, 'sheet' | 'facts' | 'place'>;
