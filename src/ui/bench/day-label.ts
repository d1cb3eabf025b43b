import { daysBetween } from '../../domain/calendar';
import type { Reading } from '../../domain/reading';
import { dayOf, momentOf } from '../../procedure/selections';
import type { Bench } from './bench.svelte';

/** The day of a reading in a word or two: today, day 12, or before the yeast. */
export function dayLabel(reading: Reading, { facts, now, whole, formats }: Bench): string {
  const moment = momentOf(reading);
  if (daysBetween(moment, now) === 0) return whole.bench.gate.today;
  const day = dayOf(facts, moment);
  return day === undefined || reading.takenAt < (facts.pitched?.at ?? 0)
    ? whole.bench.gate.beforeYeast
    : formats.dayNumber(day);
}
