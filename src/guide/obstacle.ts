import type { Problem } from '../domain/problem';
import type { Check } from '../procedure/check';
import type { Facts } from '../procedure/facts';
import { judge } from '../procedure/judge';
import type { KitSheet } from '../procedure/kit-sheet';
import type { Act, StepId } from '../procedure/step';

/** Acts that are asked again until a check is open: what they ask for was given, and was not enough. */
const ASKED_UNTIL: Partial<Record<StepId, Check>> = {
  'measure brim': 'box complete',
  'count bottles': 'bottles ready',
  'take must temperature': 'warm enough to pitch',
  'take wine temperature': 'warm enough to fine',
};

/** What keeps an act from counting as done, or had it asked again. */
export function obstacle(act: Act, sheet: KitSheet, facts: Facts): Problem | undefined {
  const missing = facts.missing[act.id] ?? [];
  if (missing.length > 0)
    return { code: act.step === 'lay out sachets' ? 'sachets-missing' : 'stabilisers-not-in-hand', missing };
  const check = act.id in facts.done ? ASKED_UNTIL[act.step] : act.check;
  const verdict = check && judge(check, sheet, facts);
  return verdict && !verdict.open ? verdict.because : undefined;
}
