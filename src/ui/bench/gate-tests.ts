import type { Gate } from '../../procedure/phase';
import type { OwnPad } from '../../text/en/bench';

/** What a gate takes as evidence: which pad opens which test, the usual one first. */
export const TESTS: Record<Gate, readonly { pad: OwnPad; mode: 'reading' | 'gas' | 'clear' }[]> = {
  'proving mixed': [{ pad: 'new reading', mode: 'reading' }],
  'proving dry': [{ pad: 'new reading', mode: 'reading' }],
  'proving gas-free': [{ pad: 'gas test', mode: 'gas' }],
  'proving clear': [{ pad: 'look', mode: 'clear' }],
  'proving still': [
    { pad: 'new reading', mode: 'reading' },
    { pad: 'gas test', mode: 'gas' },
  ],
};
