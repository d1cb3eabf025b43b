import type { Division, Gravity } from '../../domain/gravity';

/** What may stand between the eye and the reading. */
const HURDLES = ['none', 'bubbles', 'wall', 'above', 'below'] as const;
type Hurdle = (typeof HURDLES)[number];

export type Eye = 'above' | 'level' | 'below';

/** One hydrometer to read. */
export type Round = {
  division: Division;
  /** What it reads when it floats free. */
  truth: Gravity;
  /** What holds it, and by how many ten-thousandths it stands off for that: bubbles lift, a wall holds it up or down. */
  held?: { by: 'bubbles' | 'wall'; off: number };
  /** From where it is first looked at. */
  eye: Eye;
};

/** How it is being looked at: from where, and whether it was spun free. */
export type Look = { eye: Eye; freed: boolean };

export const ROUNDS = 10;
const LOWEST = 9880;
const NEAR_DRY = 10_100;
const HIGHEST = 11_000;
const THOUSANDTH = 10;
const LEAST_LINES_OFF = 3;
const MORE_LINES_OFF = 3;

/** Ten rounds by chance: every hurdle twice, in any order, and every second reading near dryness, where it matters most. */
export function roundsFrom(random: () => number, division: Division): Round[] {
  const hurdles = shuffled([...HURDLES, ...HURDLES], random);
  return hurdles.map((hurdle, n): Round => {
    const [from, to] = n % 2 === 0 ? [LOWEST, NEAR_DRY] : [NEAR_DRY, HIGHEST];
    const steps = (to - from) / THOUSANDTH + 1;
    const truth = (from + THOUSANDTH * Math.floor(random() * steps)) as Gravity;
    const eye = hurdle === 'above' || hurdle === 'below' ? hurdle : 'level';
    const held = heldBy(hurdle, division, random);
    return { division, truth, eye, ...(held ? { held } : {}) };
  });
}

function heldBy(hurdle: Hurdle, division: Division, random: () => number): Round['held'] {
  const off = division * (LEAST_LINES_OFF + Math.floor(random() * MORE_LINES_OFF));
  if (hurdle === 'bubbles') return { by: 'bubbles', off };
  return hurdle === 'wall' ? { by: 'wall', off: random() < 0.5 ? off : 0 - off } : undefined;
}

/** In any order (Fisher and Yates). */
function shuffled<Item>(items: readonly Item[], random: () => number): Item[] {
  const left = [...items];
  return items.map(() => left.splice(Math.floor(random() * left.length), 1)[0] as Item);
}
