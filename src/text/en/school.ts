/** Where an eye goes wrong: what the drawing shows of it, and what to watch for from then on. */
type MistakeWords = { told: (right: string) => string; watch: string };
type MistakeName =
  'decimal' | 'bubbles' | 'wall' | 'above' | 'below' | 'rim' | 'one line' | 'wrong way' | 'far';

const mistakes: Record<MistakeName, MistakeWords> = {
  decimal: {
    told: (right) =>
      `The digits are there, but the point or a nought is not in its place. It reads ${right}.`,
    watch: 'Three digits stand after the point. For 0.994 you may type 994 alone; for 1.054, 1054.',
  },
  bubbles: {
    told: (right) => `Bubbles held it up. Without them it sinks to ${right}.`,
    watch: 'Look for bubbles on the glass. Shake the gas out of the sample first, and spin off the rest.',
  },
  wall: {
    told: (right) => `It leaned on the jar, and hung there. Afloat in the middle it reads ${right}.`,
    watch: 'Spin it, and wait until it rests clear of the wall.',
  },
  above: {
    told: (right) =>
      `Seen from above, the near edge of the surface lies too low on the stem. The surface meets it at ${right}.`,
    watch:
      'While the surface is an oval, your eye is too high or too low. Move until it is one straight line.',
  },
  below: {
    told: (right) =>
      `Seen from below, the near edge of the surface lies too high on the stem. The surface meets it at ${right}.`,
    watch:
      'While the surface is an oval, your eye is too high or too low. Move until it is one straight line.',
  },
  rim: {
    told: (right) => `That is the top of the rim, where the wine climbs the stem. Its flat is at ${right}.`,
    watch: 'Follow the flat of the surface to the stem, under the rim.',
  },
  'one line': {
    told: (right) => `One line off. It reads ${right}.`,
    watch: 'Count the lines from the nearest number twice, once from above and once from below.',
  },
  'wrong way': {
    told: (right) => `Numbers grow downwards on a stem: it was counted the other way. It reads ${right}.`,
    watch: 'The lightest stands highest. From a number downwards the lines add, upwards they take away.',
  },
  far: {
    told: (right) => `It reads ${right}.`,
    watch: 'Find the first number above the surface, then count the lines down to it.',
  },
};

type Shown = {
  division: string;
  /** Lines from a number down to the flat of the surface. */
  lines: string;
  number: string;
  eye: 'above' | 'level' | 'below';
  edgeLines: string;
  rimLines: string;
  held: 'bubbles' | 'wall' | 'nothing';
};

const eyes: Record<Shown['eye'], (lines: string) => string> = {
  level: () => 'Your eye is level with it: the surface is one straight line',
  above: (lines) => `Your eye is above it: the surface is an oval, its near edge ${lines} lines lower`,
  below: (lines) => `Your eye is below it: the surface is an oval, its near edge ${lines} lines higher`,
};
const holds: Record<Shown['held'], string> = {
  bubbles: 'Bubbles cling to the glass',
  wall: 'It leans on the wall of the jar',
  nothing: 'It floats free',
};

/** The school for reading a hydrometer. */
export const school = {
  title: 'Reading a hydrometer',
  lead: 'Ten hydrometers to read, each in its own trouble. Nothing here touches a batch.',
  division: 'Your hydrometer has a line at every',
  divisions: { '10': '0.001', '20': '0.002' },
  yours: (division: string) => `As on your own hydrometer, there is a line at every ${division}.`,
  begin: 'begin',
  nth: (nth: string, of: string) => `Reading ${nth} of ${of}`,
  picture: ({ division, lines, number, eye, edgeLines, rimLines, held }: Shown) =>
    [
      `A stem with a line at every ${division}`,
      lines === '0'
        ? `The flat of the surface is at the number ${number}`
        : `The flat of the surface is ${lines} lines below the number ${number}`,
      `The rim climbs ${rimLines} lines higher`,
      eyes[eye](edgeLines),
      holds[held],
    ].join('. '),
  look: {
    label: 'How to look',
    higher: 'eye higher',
    lower: 'eye lower',
    spin: 'spin it',
  },
  reading: 'What does it read?',
  hint: 'At the flat of the surface. 994, 0.994 or 0,994.',
  check: 'check it',
  next: 'next reading',
  finish: 'see how it went',
  right: (right: string) => `Right: ${right}.`,
  marks: { yours: (read: string) => `you ${read}`, right: (right: string) => `right ${right}` },
  mistakes,
  outcome: {
    title: (right: string, of: string) => `${right} of ${of} read right`,
    watch: 'What to watch for',
    times: (count: number) => (count === 1 ? 'once' : count === 2 ? 'twice' : `${String(count)} times`),
    none: 'Not one went wrong. At the bench it is the same: spin it, come down to the surface, read its flat.',
    again: 'ten more',
  },
  link: 'Practise on drawn hydrometers',
};
