import { HOUR, onDay } from '../../src/domain/calendar';
import type { Facts } from '../../src/procedure/facts';
import { evening } from './readings';

/**
 * The hour of the day, as far as a search tells it: from the evening's readings until the gate is passed on them it is
 * evening; after that nothing is read until the next.
 */
export function hour({ now, freeHour }: Facts): number | 'evening' | 'night' {
  const hours = (now.at - onDay(now, 0, 0)) / HOUR;
  if (hours < freeHour) return Math.ceil(hours);
  return hours < freeHour + 1 ? 'evening' : 'night';
}

/** Whole days from one moment to another: from evening to evening exactly, and a night's baseline a day later. */
export const wholeDays = (from: number, to: number): number => Math.floor((to - from) / HOUR / 24);

/** Days from a moment to the next evening on which something can be read; as many as any clause can tell. */
export const daysToEvening = (from: number, facts: Facts, atMost: number): number =>
  Math.min(wholeDays(from, evening(facts, 1)), atMost);
