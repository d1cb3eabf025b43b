import type { Instant } from '../../domain/unit';
import type { Act } from '../../procedure/step';

/** When an act comes due: the end of a wait, or the day that the procedure asks for. None where it is for now. */
export const dueOf = (act: Act): Instant | undefined => (act.kind === 'wait' ? act.until : act.due);
