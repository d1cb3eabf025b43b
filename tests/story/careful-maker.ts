import { RULES } from '../../src/domain/gates/passing';
import { asOf } from '../../src/procedure/facts';
import type { Gate } from '../../src/procedure/phase';
import type { Problem } from '../../src/domain/problem';
import { evidence } from '../../src/workflow/evidence';
import { Maker } from './maker';

/** A maker whose passes hold the readings that they were made on, as the journal's do. */
export class CarefulMaker extends Maker {
  override pass(gate: Gate): Problem | undefined {
    const readings = evidence(gate, this.sheet, asOf(this.facts, this.now));
    return this.report({ type: 'gate passed', how: 'touch', gate, rules: RULES, readings });
  }

  /** The last reading that a gate was passed on turns out to be wrong. */
  strike(gate: Gate): this {
    const entry = this.facts.passed[gate]?.readings.at(-1) ?? 0;
    this.wait(1).report({ type: 'reading struck', how: 'touch', entry, reason: 'it was another jar' });
    return this;
  }
}
