import { isBottled, isIn, litresNow, toldOf, type Facts } from './facts';
import type { KitSheet, Sachet } from './kit-sheet';
import { sachetsToTell } from './leads';
import { MISHAP_IDS, MISHAPS, type Mishap } from './mishap';
import type { Change } from './mishaps/mishap-rules';
import { COURSE, isEnd, type Place } from './phase';

/** Whether a mishap can have happened by now: never yet, no more, or it may be told. */
export type Timely = 'not yet' | 'no more' | 'timely';

/** Judged by where the batch stands and by what is there to go wrong. What is told beside it is looked at when it is told. */
export function isTimely(sheet: KitSheet, facts: Facts, place: Place, mishap: Mishap): Timely {
  const { at, change } = MISHAPS[mishap];
  if (isEnd(place) || sachetsToTell(sheet, mishap).length === 0) return 'no more';
  const [first, last] = [at[0], at.at(-1)].map((end) => COURSE.indexOf(end ?? 'prepare')) as [number, number];
  const here = COURSE.indexOf(place);
  if (here < first) return 'not yet';
  if (here > last || (isBottled(facts) && !at.includes('rest'))) return 'no more';
  return THERE[change]?.(facts) ?? IN_PLACE[mishap]?.(facts) ?? 'timely';
}

type Asked = (facts: Facts) => Timely | undefined;

const unless = (there: boolean, otherwise: Timely): Timely | undefined => (there ? undefined : otherwise);

/** Must or wine that was measured: without it there are no litres to lose. */
const hasLitres: Asked = (facts) => unless(litresNow(facts) > 0, 'not yet');

const hydrometer: Asked = (facts) =>
  unless(
    facts.instrument !== undefined,
    toldOf(facts, 'hydrometer broken', 'hydrometer in the wine').length > 0 ? 'no more' : 'not yet',
  );

const THERE: Partial<Record<Change, Asked>> = {
  'litres lost': hasLitres,
  'filled anew': hasLitres,
  'topped up': hasLitres,
  'instrument gone': hydrometer,
  'glass in wine': hydrometer,
  'moved early': ({ done }) => unless(!('siphon off 1' in done), 'no more'),
  'poured back': (facts) => unless(isBottled(facts), 'not yet'),
};

const IN_PLACE: Partial<Record<Mishap, Asked>> = {
  'gas in bottles': (facts) => unless(isBottled(facts), 'not yet'),
  'closures rising': (facts) => unless(isBottled(facts), 'not yet'),
  'one of a pair': ({ additions }) =>
    unless(
      additions.some(({ contents }) => contents.includes('sulphite') || contents.includes('sorbate')),
      'not yet',
    ),
};

/** What the list of mishaps holds where the batch stands: nothing that cannot have happened. */
export const canBeTold = (sheet: KitSheet, facts: Facts, place: Place): Mishap[] =>
  MISHAP_IDS.filter((mishap) => isTimely(sheet, facts, place, mishap) === 'timely');

/** The sachets that a mishap can be about as the journal stands: in, or not in, as the mishap has it. */
export function sachetsNow(sheet: KitSheet, facts: Facts, mishap: Mishap): Sachet[] {
  const wantsIn = mishap === 'sachet still full' || mishap === 'forgot yeast';
  const either = mishap === 'finings reversed';
  return sachetsToTell(sheet, mishap).filter(({ id }) => either || isIn(facts, id) === wantsIn);
}

const LEAVES_THE_WINE: ReadonlySet<Change> = new Set<Change>(['nothing', 'stirred up', 'glass in wine']);

/** Only what has changed nothing in the wine can be taken back: what is in stays in. */
export const canBeTakenBack = ({ mishaps }: Facts, entry: number): boolean =>
  mishaps.some(
    ({ mishap, struck, ...told }) =>
      told.entry === entry && !struck && LEAVES_THE_WINE.has(MISHAPS[mishap].change),
  );
