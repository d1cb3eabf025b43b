import type { Litres } from '../../src/domain/unit';
import { timesReturned } from '../../src/procedure/facts';
import type { KitSheet } from '../../src/procedure/kit-sheet';
import { builtInSheets } from '../../src/procedure/kits';
import { isPhase, type Gate } from '../../src/procedure/phase';
import { plan } from '../../src/procedure/plan';
import type { Act } from '../../src/procedure/step';
import type { Problem } from '../../src/domain/problem';
import { Maker } from './maker';

/** What a maker answers instead of the usual, where it answers anything else. */
type Trouble = (maker: Maker) => { problem: Problem | undefined } | undefined;

const none: Trouble = () => undefined;

/** A first vessel that leaves foam little room, and gas that three tests still find. */
const smallAndGassy: Trouble = (maker) => {
  const { act, place, sheet, facts } = maker;
  const how = 'touch' as const;
  if (act?.step === 'measure brim') {
    const litres = (sheet.batchLitres * 1.15) as Litres;
    return { problem: maker.report({ type: 'litres measured', how, act: act.id, litres }) };
  }
  if (place !== 'proving gas-free' || timesReturned(facts, place) === 3) return undefined;
  maker.judge('gas', true);
  return { problem: maker.report({ type: 'sent back', how, gate: place, clause: 'gassy' }) };
};

/** Every act that a sheet's plan holds at any moment of a batch, from the box to the first taste. */
function everyActOf(sheet: KitSheet, trouble: Trouble): Act[] {
  const maker = new Maker(sheet);
  const acts = new Map<string, Act>();
  for (let steps = 0; maker.place !== 'finished' && steps < 500; steps += 1) {
    const { place } = maker;
    if (isPhase(place)) plan(place, sheet, maker.facts).forEach((act) => acts.set(act.id, act));
    const usual = () => (isPhase(place) ? maker.answer() : maker.prove(place as Gate));
    const answered = trouble(maker);
    const problem = answered ? answered.problem : usual();
    if (problem) throw new Error(`${place}: ${JSON.stringify(problem)}`);
  }
  return [...acts.values()];
}

export const everyAct: readonly Act[] = builtInSheets.flatMap((sheet) =>
  [none, smallAndGassy].flatMap((trouble) => everyActOf(sheet, trouble)),
);
