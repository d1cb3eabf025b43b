import { judge } from '../../procedure/judge';
import type { Act } from '../../procedure/step';
import type { Bench } from '../bench/bench.svelte';

/** Whether an act's check is shut: its card then says why, and it cannot be done. */
export const isHeld = ({ check }: Act, { sheet, facts }: Bench): boolean =>
  check !== undefined && !judge(check, sheet, facts).open;
