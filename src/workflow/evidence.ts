import { countedReadings } from '../domain/gates/counted-readings';
import { standing, type Reading } from '../domain/reading';
import type { Facts } from '../procedure/facts';
import type { KitSheet } from '../procedure/kit-sheet';
import { finishOf } from '../procedure/limits';
import type { Gate } from '../procedure/phase';
import { readingsOfFerment, readingsOfMust } from '../procedure/selections';

/** The readings on which a gate is passed, by their places in the journal. */
export const evidence = (gate: Gate, sheet: KitSheet, facts: Facts): number[] =>
  (READ_AT[gate]?.(sheet, facts) ?? []).map(({ entry }) => entry);

const READ_AT: Partial<Record<Gate, (sheet: KitSheet, facts: Facts) => readonly Reading[]>> = {
  'proving mixed': (_, facts) => standing(readingsOfMust(facts)).slice(-1),
  'proving dry': (sheet, facts) => countedReadings(readingsOfFerment(facts), finishOf(sheet)),
  'proving still': (_, facts) => sinceBaseline(facts),
};

function sinceBaseline({ readings, baseline }: Facts): Reading[] {
  const first = readings.find(({ entry }) => entry === baseline);
  return first ? standing(readings).filter(({ takenAt }) => takenAt >= first.takenAt) : [];
}
