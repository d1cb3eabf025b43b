import type { Litres } from '../domain/unit';
import type { Act } from './step';

/** What litres are asked of. */
export type LitresOf = Extract<Act, { kind: 'litres' }>['of'];

const LITRES_ASKED: Record<LitresOf, readonly [lowest: number, highest: number]> = {
  brim: [3, 100],
  vessel: [3, 100],
  must: [1, 60],
  wine: [1, 60],
  room: [1, 60],
  'top-up': [0, 10],
};

/** The litres that make sense where they are asked. */
export function litresAsked(of: LitresOf): { lowest: Litres; highest: Litres } {
  const [lowest, highest] = LITRES_ASKED[of] as readonly [Litres, Litres];
  return { lowest, highest };
}
