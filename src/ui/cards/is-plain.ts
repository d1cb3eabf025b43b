import type { Act } from '../../procedure/step';

/** Whether a card has nothing to be filled in: it shows an act, and is answered by a word. */
export const isPlain = ({ kind }: Act): boolean => kind === 'do' || kind === 'add';
