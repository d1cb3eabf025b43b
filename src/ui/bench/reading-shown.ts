import type { Gravity } from '../../domain/gravity';
import { standing } from '../../domain/reading';
import type { Facts } from '../../procedure/facts';
import type { KitSheet } from '../../procedure/kit-sheet';
import { earlyMoveAt, finishOf, inUse, startRangeOf } from '../../procedure/limits';
import { isGate, type Place } from '../../procedure/phase';
import type { Act } from '../../procedure/step';
import { bandAt } from './gate-readings';

/** Where the drawn hydrometer floats and why there, and what the reading is held against. */
export type ReadingShown = {
  at: Gravity;
  because: 'in water' | 'as last read' | 'in the range' | 'at the limit';
  band?: { kind: 'limit' | 'move' | 'start' | 'baseline'; highest: Gravity; lowest?: Gravity };
};

const WATER = 10_000 as Gravity;

/** The hydrometer for an act, or for a gate: at the last reading; before there is one, where the sheet wants it. */
export function readingShown(
  place: Place,
  act: Act | undefined,
  sheet: KitSheet,
  facts: Facts,
): ReadingShown {
  if (act?.kind === 'instrument') return { at: WATER, because: 'in water' };
  const band = bandOf(place, act, sheet, facts);
  const last = standing(facts.readings).at(-1)?.gravity;
  const shown = band ? { band } : {};
  if (last !== undefined) return { at: last, because: 'as last read', ...shown };
  if (band?.lowest === undefined) return { at: band?.highest ?? WATER, because: 'at the limit', ...shown };
  return { at: Math.round((band.highest + band.lowest) / 2) as Gravity, because: 'in the range', ...shown };
}

function bandOf(place: Place, act: Act | undefined, sheet: KitSheet, facts: Facts): ReadingShown['band'] {
  if (isGate(place)) return bandAt(place, sheet, facts);
  const early = act?.step === 'read for the move' ? earlyMoveAt(sheet) : undefined;
  if (early !== undefined) return { kind: 'move', highest: early };
  if (act?.step === 'read start') return { kind: 'start', ...startRangeOf(sheet) };
  if (act?.step === 'read baseline') return undefined;
  return { kind: 'limit', highest: finishOf(inUse(sheet, facts.leftOut)).limit };
}
