import { fermentPace, type Pace } from '../../domain/gates/ferment-pace';
import { finishOf, inUse } from '../../procedure/limits';
import { readingsOfFerment } from '../../procedure/selections';
import type { Bench } from '../bench/bench.svelte';

/** How the ferment goes, where the wine is at it or is asked whether it is over. */
export function paceAt({ place, sheet, facts, now }: Bench): Pace | undefined {
  if (place !== 'ferment' && place !== 'proving dry') return undefined;
  return fermentPace(readingsOfFerment(facts), finishOf(inUse(sheet, facts.leftOut)), now);
}
