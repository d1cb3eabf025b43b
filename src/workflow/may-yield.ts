import type { Check } from '../procedure/check';
import type { Facts } from '../procedure/facts';
import type { Gate } from '../procedure/phase';
import { MOST_EXTRA_ROUNDS, WARM_FOR_GAS } from '../procedure/phases/degas';
import { yields } from '../procedure/yielding';

/** What a clause that fails gives way to: a typed reason, a reason later on, or nothing at all. */
export type Yield = 'to a reason' | 'later' | 'never';

/** Whether a clause that fails gives way where it is asked, and whether it is time for that. */
export function mayYield(question: Gate | Check, clause: string, facts: Facts): Yield {
  if (!yields(question, clause)) return 'never';
  return question !== 'proving gas-free' || gasWasTried(facts) ? 'to a reason' : 'later';
}

/** Gas yields only after the rounds, the warmth and another test have all been tried. */
function gasWasTried({ returns, temperatures, judgements }: Facts): boolean {
  const back = returns.filter(({ gate }) => gate === 'proving gas-free');
  const warmed = temperatures.findLast(({ celsius }) => celsius >= WARM_FOR_GAS);
  return (
    back.length > MOST_EXTRA_ROUNDS &&
    warmed !== undefined &&
    judgements.some(({ what, at }) => what === 'gas' && at >= warmed.at)
  );
}
