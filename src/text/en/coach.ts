/** What the measuring coach looks after, in the order of the hands. */
export const COACHED = ['plain water', 'temperature', 'degas', 'spin', 'eye level'] as const;
export type Coached = (typeof COACHED)[number];

type CoachWords = { show: string; say: string; why: string };

const lines: Record<Coached, CoachWords> = {
  'plain water': {
    show: 'Float it in plain water first.',
    say: 'Float the hydrometer in plain water of about room warmth. What it shows beside 1.000 is its own fault, and is taken off from then on.',
    why: 'Paper scales slip. One check in water puts right every reading that follows.',
  },
  temperature: {
    show: 'Temperature first.',
    say: 'Thermometer into the jar before anything else, and give it a minute. A small sample cools while you look.',
    why: 'Warm wine is thinner, so the hydrometer sinks too deep. With the temperature the guide corrects for that.',
  },
  degas: {
    show: 'Shake the gas out.',
    say: 'Cover the jar, shake it, and let the gas out. Again, until nothing hisses.',
    why: 'Bubbles cling to the glass and lift it, and a wine that is finished seems not to be.',
  },
  spin: {
    show: 'Spin it, clear of the wall.',
    say: 'Spin the hydrometer between two fingers, and let it come to rest in the middle of the jar.',
    why: 'The spin throws off the last bubbles. Against the wall it sticks, and stands wherever it likes.',
  },
  'eye level': {
    show: 'Read at eye level, at the flat of the surface.',
    say: 'Bring your eye down to the surface, and read where it is flat. The rim that climbs the stem does not count.',
    why: 'From above, one line becomes another. On the narrow part of the scale that is a day’s fermenting.',
  },
};

/** The measuring coach. */
export const coach = {
  title: 'How to read it',
  lines,
  offset: {
    none: 'In water it shows what it should. Nothing is taken off.',
    high: (by: string) => `In water it shows ${by} too much. That is taken off every reading.`,
    low: (by: string) => `In water it shows ${by} too little. That is added to every reading.`,
  },
};
