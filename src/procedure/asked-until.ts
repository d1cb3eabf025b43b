import type { Check } from './check';
import type { Facts } from './facts';
import type { Act, StepId } from './step';

/** Acts that are asked again until a check is open: what they ask for was given, and was not enough. */
const ASKED_UNTIL: Readonly<Partial<Record<StepId, Check>>> = {
  'measure brim': 'box complete',
  'count bottles': 'bottles ready',
  'take must temperature': 'warm enough to pitch',
  'take wine temperature': 'warm enough to fine',
  'top up': 'topped up',
};

/** The check that an act waits for: its own, or the one that had it asked again. */
export const checkOf = ({ id, nth, step, check }: Act, { done }: Facts): Check | undefined =>
  id in done || nth > 1 ? (ASKED_UNTIL[step] ?? check) : check;
