import { builtInSheets } from '../../src/procedure/kits';
import { isPhase } from '../../src/procedure/phase';
import { plan } from '../../src/procedure/plan';
import type { Gate } from '../../src/procedure/phase';
import type { KitSheet } from '../../src/procedure/kit-sheet';
import type { Act } from '../../src/procedure/step';
import { Maker } from './maker';

/** Every act that a sheet's plan holds at any moment of a normal batch, from the box to the first taste. */
export function everyActOf(sheet: KitSheet): Act[] {
  const maker = new Maker(sheet);
  const acts = new Map<string, Act>();
  for (let steps = 0; maker.place !== 'finished' && steps < 500; steps += 1) {
    const { place } = maker;
    if (isPhase(place)) plan(place, sheet, maker.facts).forEach((act) => acts.set(act.id, act));
    const problem = isPhase(place) ? maker.answer() : maker.prove(place as Gate);
    if (problem) throw new Error(`${place}: ${JSON.stringify(problem)}`);
  }
  return [...acts.values()];
}

export const everyAct: readonly Act[] = builtInSheets.flatMap(everyActOf);
