import type { Sourced, Threshold } from '../../procedure/thresholds';
import type { Formats } from '../formats';

/** Who a number at a gate comes from: the stricter of the two speaks. */
type Source = Sourced['from'];

/** `where` is what the sheet says of its own number: "leaflet, page 4". */
const from: Record<Source, (where?: string) => string> = {
  house: () => 'the house rule',
  sheet: (where) => (where === undefined ? 'your sheet' : `your sheet (${where})`),
};

/** What is judged, and its number. */
type What = { label: string; number: (value: number, formats: Formats) => string };

const plain = (value: number, f: Formats): string => f.count(value);
const days = (value: number, f: Formats): string => f.days(value);
const gravity = (value: number, f: Formats): string => f.gravity(value as never);

const what: Record<Threshold['what'], What> = {
  'dry limit': { label: 'Finished at', number: (value, f) => `${gravity(value, f)} or lower` },
  readings: { label: 'Readings that agree', number: plain },
  'hours apart': { label: 'From the first to the last', number: (value, f) => `${f.hours(value)} or more` },
  'wine at least': {
    label: 'The wine itself',
    number: (value, f) => `${f.celsius(value as never)} or warmer`,
  },
  'minimum days': { label: 'Not before', number: (value, f) => f.dayNumber(value) },
  resolution: {
    label: 'What your scale can tell apart',
    number: (value, f) => `more than ${gravity(value, f)}`,
  },
  'lowest start': { label: 'Start gravity, lowest', number: gravity },
  'highest start': { label: 'Start gravity, highest', number: gravity },
  stirred: { label: 'Stirred by the clock', number: (value, f) => f.duration(value) },
  'quiet tests': { label: 'Quiet gas tests in a row', number: plain },
  'clearing days': { label: 'Left to clear', number: (value, f) => `${days(value, f)} or more` },
  'clear looks': { label: 'Days on which it looks clear', number: plain },
  'resting days': { label: 'Rest after the baseline', number: (value, f) => `${days(value, f)} or more` },
};

/** Where the numbers at a gate come from. */
export const sources = {
  title: 'What it is judged by',
  from,
  what,
  of: (number: string, source: string) => `${number}: ${source}`,
  stricter: (source: string) => `The stricter counts: ${source}.`,
  /** What the other of the two says, where they differ. */
  otherwise: (from: Source, number: string) =>
    from === 'sheet' ? `The house alone asks for ${number}.` : `Your sheet alone asks for ${number}.`,
};
