import { isPhase, type Place } from '../../src/procedure/phase';
import { plan } from '../../src/procedure/plan';
import type { Act } from '../../src/procedure/step';
import type { Known } from './known';

/** The acts that wait in a phase, without their numbers: the tenth reading on the way is like the ninth. */
export const remaining = ({ sheet, facts }: Known, place: Place): string | undefined =>
  isPhase(place)
    ? plan(place, sheet, facts)
        .filter(({ done }) => !done)
        .map((act) => `${act.step} ${sachetOf(act)}`)
        .join()
    : undefined;

const sachetOf = (act: Act): string =>
  ('sachet' in act ? (act as { sachet?: { id: string } }).sachet?.id : undefined) ?? '';
