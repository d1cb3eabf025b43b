import type { Celsius } from '../../domain/unit';
import type { Consequence } from '../../procedure/consequence';
import type { Formats } from '../formats';
import { quoted } from './counted';

type Range = Consequence['sugar'];

/** Grams are told whole from ten on: the sum is no better than that. */
const grams = (value: number, f: Formats): string => f.grams(value < 10 ? value : Math.round(value));

const NO_PRESSURE = 0.05;

/** "3 bar to 6 bar", "6 bar or more", "no pressure": from the least to the most that the sugar may make. */
function pressure({ low, high }: Range, orMore: boolean, f: Formats): string {
  const [least, most] = [f.bar(Math.max(0, low)), f.bar(Math.max(0, high))];
  if (orMore) return `${least} or more`;
  if (high < NO_PRESSURE) return 'no pressure';
  if (low < NO_PRESSURE) return `anything up to ${most}`;
  return least === most ? `about ${most}` : `${least} to ${most}`;
}

/** What ignoring a shut gate would mean for this batch, in its own numbers. */
export const consequence = {
  title: 'Bottled now',

  /** How much sugar is left, give or take. */
  sugar: ({ sugar: { value, low, high } }: Consequence, f: Formats): string => {
    const by = Math.max(value - low, high - value);
    return low <= 0
      ? `There may be up to ${grams(high, f)} of sugar left in each litre; a hydrometer cannot show it closer.`
      : `There are about ${grams(value, f)} of sugar left in each litre, give or take ${grams(by, f)}.`;
  },

  /** The pressure in a closed bottle, at two rooms' warmth. */
  pressure: ({ at20, at30, orMore }: Consequence, f: Formats): string =>
    `Bottled now, it would ferment on: ${pressure(at20, orMore, f)} in a bottle at ${f.celsius(20 as Celsius)}, ${pressure(at30, orMore, f)} at ${f.celsius(30 as Celsius)}.`,

  /** That pressure beside what a bottle for still wine is meant to hold. */
  beside: ({ at20, meantFor, orMore }: Consequence, f: Formats): string => {
    const meant = `A bottle for still wine is meant for ${f.bar(meantFor)} at ${f.celsius(20 as Celsius)}`;
    if (orMore || at20.low > meantFor) return `${meant}; this is more, and glass bursts without warning.`;
    return at20.high > meantFor
      ? `${meant}; this may be more, and glass bursts without warning.`
      : `${meant}; this is not more, but the proof that it stays so is missing.`;
  },

  /** The same, drawn. */
  drawn: {
    meant: (bar: string) => `what the bottle is meant for: ${bar}`,
    held: (celsius: string) => `this wine in it, at ${celsius}`,
    unit: 'bar',
  },

  /** Stabilisers that would be spent in vain; nothing where none are left. */
  wasted: ({ wasted }: Consequence, f: Formats): string | undefined =>
    wasted.length === 0
      ? undefined
      : `Added now, ${f.list(wasted.map(quoted))} would be wasted: stabiliser does not stop yeast that is at work, and there is no second dose.`,
};
