import type { REMEDIES } from '../../workflow/remedies';

/** The ways back from a gate, by the clause that sends the wine there. */
export const ways = {
  'under-stirred': 'stir it again',
  'no-start-reading': 'stir and read again',
  'start-outside': 'stir and read again',
  gassy: 'stir out more gas',
  cloudy: 'leave it to clear',
  'still-moving': 'let it ferment on',
  'no-baseline': 'top up and read again',
  'dryness-in-doubt': 'read a new baseline',
} satisfies Record<WayBack, string>;
export type WayBack = (typeof REMEDIES)[number]['clause'];

/** The page of a gate: why it is shut, what was read, and when it could open. */
export const gate = {
  notYet: 'Not yet.',
  opens: {
    'proving mixed': 'It is mixed.',
    'proving dry': 'It is finished.',
    'proving gas-free': 'The gas is out.',
    'proving clear': 'It is bright.',
    'proving still': 'It is still.',
  },
  also: 'Also',
  earliest: 'Earliest',
  earliestNow: 'As soon as this is put right: time is not what it waits for.',
  tonight: 'Tonight',
  forward: 'The only way on from here is through this gate.',
  readings: 'Readings',
  lower: 'lower is later',
  limit: (limit: string) => `finished: ${limit} or lower`,
  start: (lowest: string, highest: string) => `the sheet: ${lowest} to ${highest}`,
  baseline: (baseline: string) => `unchanged from ${baseline}`,
  line: (count: number) =>
    `Number line with ${count === 1 ? 'one reading' : `${count} readings`}. The table below holds the same.`,
  beforeYeast: 'at the start',
  today: 'today',
  readAs: (read: string, sample: string) => `${read} at ${sample}`,
  wineAt: (wine: string) => `wine at ${wine}`,
  marks: {
    counted: 'counted',
    earlier: 'earlier',
    cold: 'not counted: the wine was cold',
    gassy: 'not counted: gas in the sample',
    struck: 'struck: it was wrong',
  },
  passes: (passes: number) =>
    passes === 0
      ? 'No quiet test yet: two in a row are wanted.'
      : passes === 1
        ? 'One quiet test. One more.'
        : 'Two quiet tests in a row.',
};
