import { nextFreeHour } from '../../src/domain/calendar';
import { judge } from '../../src/procedure/judge';
import { isEnd, isPhase, type Gate } from '../../src/procedure/phase';
import { asOf, toldOf } from '../../src/procedure/facts';
import { remediesFor } from '../../src/workflow/remedies';
import type { Maker } from '../story/maker';
import { anotherHydrometer } from '../story/persevere';
import { readAgain } from './readings';

const PATIENCE = 400;

/**
 * From here on the wine is sound and dry, and the maker does what the guide asks: answers the act, proves the gate, takes
 * the way back that the gate offers, and reads again where only another reading helps. Gives where that did not end.
 */
export function followSensibly(maker: Maker, goal: string): string | undefined {
  for (let moves = 0; moves < PATIENCE; moves += 1) {
    if (maker.place === goal || isEnd(maker.place)) return undefined;
    const before = maker.facts;
    setRight(maker);
    if (isPhase(maker.place)) atAct(maker);
    else atGate(maker, maker.place);
    if (maker.facts === before) return `nothing that ${maker.place} takes`;
  }
  return `never out of ${maker.place}`;
}

/** Glass was found outside the wine after all, and another hydrometer takes the place of one that is gone. */
function setRight(maker: Maker): void {
  for (const { entry } of toldOf(maker.facts, 'hydrometer in the wine'))
    maker.report({ type: 'mishap struck', how: 'key', entry, reason: 'every piece was found outside' });
  if (!maker.facts.instrument && maker.act?.kind !== 'instrument') maker.report(anotherHydrometer);
}

/** Where the act is refused because the proof has grown stale meanwhile, one fresh reading. */
function atAct(maker: Maker): void {
  if (maker.answer() !== undefined) readAgain(maker, maker.now.at);
}

function atGate(maker: Maker, gate: Gate): void {
  if (maker.prove(gate) === undefined) return;
  const verdict = judge(gate, maker.sheet, asOf(maker.facts, maker.now));
  if (verdict.open) return;
  const [way] = remediesFor(gate, [verdict.because, ...verdict.also]);
  if (way) maker.report({ type: 'sent back', how: 'touch', gate, clause: way.clause });
  else readAgain(maker, nextFreeHour({ ...maker.now, at: verdict.earliest ?? maker.now.at }, 18));
}
