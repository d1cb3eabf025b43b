import { countedReadings, mayCount } from '../../domain/gates/counted-readings';
import type { Gravity } from '../../domain/gravity';
import { resolutionOf, type Reading } from '../../domain/reading';
import type { Facts } from '../../procedure/facts';
import type { KitSheet } from '../../procedure/kit-sheet';
import { finishOf, inUse, startRangeOf } from '../../procedure/limits';
import type { Gate } from '../../procedure/phase';
import { readingsOfFerment, readingsOfMust } from '../../procedure/selections';

export type Mark = 'counted' | 'earlier' | 'cold' | 'gassy' | 'struck';
export type MarkedReading = { reading: Reading; mark: Mark };

const byTime = (readings: readonly Reading[]): Reading[] =>
  readings.toSorted((a, b) => a.takenAt - b.takenAt || a.entry - b.entry);

/** The readings that a gate looks at, oldest first, each with how it counts there. None where it does not look at any. */
export function readingsAt(gate: Gate, sheet: KitSheet, facts: Facts): MarkedReading[] {
  if (gate === 'proving mixed') return plainly(readingsOfMust(facts));
  if (gate === 'proving still') return plainly(sinceBaseline(facts));
  return gate === 'proving dry' ? towardsDry(sheet, facts) : [];
}

const plainly = (readings: readonly Reading[]): MarkedReading[] =>
  byTime(readings).map((reading) => ({ reading, mark: reading.struck ? 'struck' : 'counted' }));

function sinceBaseline({ readings, baseline }: Facts): Reading[] {
  const from = readings.find(({ entry }) => entry === baseline);
  return from ? readings.filter(({ takenAt }) => takenAt >= from.takenAt) : [];
}

/** All of them, the start included: the fall is part of the answer. */
function towardsDry(sheet: KitSheet, facts: Facts): MarkedReading[] {
  const finish = finishOf(inUse(sheet, facts.leftOut));
  const ferment = readingsOfFerment(facts);
  const counted = new Set(countedReadings(ferment, finish));
  const markOf = (reading: Reading): Mark => {
    if (reading.struck) return 'struck';
    if (counted.has(reading)) return 'counted';
    if (!ferment.includes(reading) || mayCount(reading, finish)) return 'earlier';
    return reading.degassed ? 'cold' : 'gassy';
  };
  const shown = [
    ...readingsOfMust(facts),
    ...ferment.filter((reading) => !readingsOfMust(facts).includes(reading)),
  ];
  return byTime(shown).map((reading) => ({ reading, mark: markOf(reading) }));
}

/** What a gate holds its readings against: a limit to come below, or a range to come into. */
export type Band = { kind: 'limit' | 'start' | 'baseline'; highest: Gravity; lowest?: Gravity };

export function bandAt(gate: Gate, sheet: KitSheet, facts: Facts): Band | undefined {
  if (gate === 'proving mixed') return { kind: 'start', ...startRangeOf(sheet) };
  if (gate === 'proving dry') return { kind: 'limit', highest: finishOf(inUse(sheet, facts.leftOut)).limit };
  const baseline = facts.readings.find(({ entry }) => entry === facts.baseline);
  if (gate !== 'proving still' || !baseline) return undefined;
  const resolution = resolutionOf(sinceBaseline(facts));
  const around = (by: number) => (baseline.gravity + by) as Gravity;
  return { kind: 'baseline', highest: around(resolution), lowest: around(0 - resolution) };
}
