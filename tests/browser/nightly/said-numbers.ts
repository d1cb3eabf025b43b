import type { Field } from '../../../src/guide/dictation';

const GRAVITIES: Record<number, string> = {
  9950: 'nine nine five',
  9980: 'nine nine eight',
  10_000: 'one thousand',
  10_260: 'ten twenty-six',
  10_670: 'ten sixty-seven',
};
const OTHERS: Record<number, string> = {
  0: 'zero',
  20: 'twenty',
  21: 'twenty-one',
  28: 'twenty-eight',
  30: 'thirty',
};

/** How a number is said where it is asked; only those are known of which there is a clip. */
export function phraseFor(field: Field, value: number): string {
  const said = (field === 'reading' || field === 'waterReading' ? GRAVITIES : OTHERS)[value];
  if (said === undefined) throw new Error(`nobody has said ${String(value)} for ${field}`);
  return said;
}
