/** The words of the cards that may be asked for at once: sachets, and what is asked back of a reading. */
export const firstCards = {
  sachet: {
    count: (count: number) =>
      count === 1 ? 'one sachet' : count === 2 ? 'both sachets' : `all ${count} sachets`,
    printed: 'Printed on it',
    grams: (grams: string) => `${grams} each`,
    dissolve: 'Dissolve it first in a little of the wine or water.',
    picture: (printed: string) => `A sachet, printed: ${printed}`,
  },

  account: {
    list: 'Tick each one that is in front of you',
    all: 'All are there.',
    row: (inRow: number, apart: number, there: number) =>
      `${String(inRow)} sachets in a row, in the order of their use${apart > 0 ? ', the yeast apart' : ''}; ${String(there)} of them there`,
    left: (count: number) => (count === 1 ? 'one still to find' : `${count} still to find`),
  },

  reading: {
    title: 'A new reading',
    sample: 'Warmth of the sample',
    sampleHint: 'Thermometer in the sample jar, first of all.',
    reading: 'What the hydrometer shows',
    readingHint: 'Eye level with the surface, at its flat part. 996, 0.996 or 0,996.',
    wine: 'Warmth of the wine itself',
    wineHint: 'In its vessel, not in the jar.',
    degassed: 'Was the gas shaken out of the sample?',
    returned: 'Did the sample go back, from a sanitised jar?',
    more: 'It was taken earlier',
    takenAt: 'When it was taken',
    takenHint: 'Leave this empty if you read it just now.',
    corrected: (read: string, sample: string, gravity: string) =>
      `${read} read at ${sample} is ${gravity} at 20 °C.`,
    asRead: (read: string) => `${read}. Right?`,
    doubtful: 'Look again before you say yes',
    spoken: (read: string) => `“${read}”`,
    wineIs: (wine: string) => `The wine itself is at ${wine}.`,
    gassy: 'The gas was not shaken out, so it will be shown but not counted.',
    kept: 'The sample did not go back.',
    earlier: (when: string) => `Taken ${when}.`,
  },
};
