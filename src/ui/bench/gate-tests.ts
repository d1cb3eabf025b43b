import type { Gate } from '../../procedure/phase';
import type { Command } from '../../text/en/bench';

/** What a gate takes as evidence: which pad opens which test, the usual one first. */
export const TESTS: Record<Gate, readonly { command: Command; mode: 'reading' | 'gas' | 'clear' }[]> = {
  'proving mixed': [{ command: 'new reading', mode: 'reading' }],
  'proving dry': [{ command: 'new reading', mode: 'reading' }],
  'proving gas-free': [{ command: 'gas test', mode: 'gas' }],
  'proving clear': [{ command: 'look', mode: 'clear' }],
  'proving still': [
    { command: 'new reading', mode: 'reading' },
    { command: 'gas test', mode: 'gas' },
  ],
};
