import { verdictOn, type Verdict } from '../verdict';

export type Closure = 'cork' | 'screw cap' | 'crown cap';

/** What is asked before the first bottle is filled. `threaded`: some of the bottles have a screw thread. */
export type Bottles = {
  counted: { bottles: number; closures: number; threaded: boolean } | undefined;
  wanted: number;
  closure: Closure;
};

/** Are there bottles and closures enough, of a kind that belong together? Never a cork in a screw-thread bottle. */
export function bottlesReady({ counted, wanted, closure }: Bottles): Verdict {
  if (!counted) return verdictOn([{ code: 'not-counted' }]);
  const { bottles, closures, threaded } = counted;
  return verdictOn([
    threaded && closure === 'cork' && { code: 'cork-in-screw-thread' },
    bottles < wanted && { code: 'too-few-bottles', bottles, wanted },
    closures < wanted && { code: 'too-few-closures', closures, wanted },
  ]);
}
