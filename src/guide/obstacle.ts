import type { Problem } from '../domain/problem';
import { checkOf } from '../procedure/asked-until';
import type { Facts } from '../procedure/facts';
import { judge } from '../procedure/judge';
import type { KitSheet } from '../procedure/kit-sheet';
import type { Act } from '../procedure/step';

/** What keeps an act from counting as done, or had it asked again. */
export function obstacle(act: Act, sheet: KitSheet, facts: Facts): Problem | undefined {
  const missing = facts.missing[act.id] ?? [];
  if (missing.length > 0)
    return { code: act.step === 'lay out sachets' ? 'sachets-missing' : 'stabilisers-not-in-hand', missing };
  const check = checkOf(act, facts);
  const verdict = check && judge(check, sheet, facts);
  return verdict && !verdict.open ? verdict.because : undefined;
}
