import { COURSE, isGate, isPhase, type Place } from '../../procedure/phase';

/** One mark on the graduated edge: how far up it stands (0 to 1), and whether the wine has reached it. */
export type Mark = { place: string; at: number; gate: boolean; reached: boolean };
export type Course = { marks: Mark[]; level: number; nth: number; of: number };

/** The edge for a place: `share` is how much of the phase is done. A batch that has ended fills it. */
export function courseOf(place: Place, share: number): Course {
  const of = COURSE.length;
  const index = isPhase(place) || isGate(place) ? COURSE.indexOf(place) : of;
  const within = index < of ? Math.min(1, Math.max(0, share)) : 0;
  const marks = COURSE.map((each, n): Mark => ({
    place: each,
    at: n / of,
    gate: isGate(each),
    reached: n <= index,
  }));
  return { marks, level: (index + within) / of, nth: Math.min(index + 1, of), of };
}
