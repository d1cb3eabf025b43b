import type { Moment } from '../domain/calendar';
import type { Instant } from '../domain/unit';
import { isStabiliser } from './contents';
import { isBottled, isIn, type Facts } from './facts';
import type { KitSheet, Sachet } from './kit-sheet';
import type { Mishap } from './mishap';
import { MISHAPS } from './mishap';
import { between } from './mishaps/mishap-rules';
import { COURSE, type Gate, type Phase } from './phase';

type Where = Phase | Gate;

/** A mishap that leads anywhere leads back. Where it is said decides whether: from there to the end of `from`. */
export type LeadsBack = { why: Why; from: readonly Where[]; to: Where };

type Why =
  | 'sugar without guard'
  | 'late addition'
  | 'stabiliser not in'
  | 'finings not in'
  | 'yeast not in'
  | 'filled wrongly'
  | 'stirred up'
  | 'poured back'
  | 'poured back, never proven dry';

/** Where mishaps lead, all of it. Every row leads back, never on: no mishap passes a gate. */
export const LEADS_BACK: readonly LeadsBack[] = [
  { why: 'sugar without guard', from: between('rack', 'bottle'), to: 'ferment' },
  { why: 'late addition', from: between('clear', 'bottle'), to: 'top up' },
  { why: 'stabiliser not in', from: between('degas', 'bottle'), to: 'proving dry' },
  { why: 'finings not in', from: between('top up', 'bottle'), to: 'fine' },
  { why: 'yeast not in', from: between('ferment', 'proving dry'), to: 'pitch' },
  { why: 'filled wrongly', from: between('proving mixed', 'pitch'), to: 'mix' },
  { why: 'stirred up', from: between('proving still', 'bottle'), to: 'proving clear' },
  { why: 'poured back', from: between('bottle', 'rest'), to: 'proving still' },
  { why: 'poured back, never proven dry', from: between('bottle', 'rest'), to: 'proving dry' },
];

/** A mishap as it is told; `takenAt` where it happened earlier than it is told. */
export type Telling = { mishap: Mishap; sachet?: string | undefined; takenAt?: Instant | undefined };

/** Where a mishap leads from where it is said; nothing where the batch stays. */
export function leadsTo(sheet: KitSheet, facts: Facts, place: Where, told: Telling): Where | undefined {
  const why = whyOf(sheet, facts, place, told);
  return LEADS_BACK.find((row) => row.why === why && row.from.includes(place))?.to;
}

function whyOf(sheet: KitSheet, facts: Facts, place: Where, told: Telling): Why | undefined {
  const { change } = MISHAPS[told.mishap];
  if (change === 'poured back')
    return facts.passed['proving dry'] ? 'poured back' : 'poured back, never proven dry';
  if (isBottled(facts)) return undefined;
  const sachet = toldSachet(sheet, facts, told);
  if (change === 'sachet in')
    return sachet && !isIn(facts, sachet.id) ? added(sheet, facts, place, sachet, told.takenAt) : undefined;
  if (change === 'sachet not in') return sachet && notIn(facts, sachet);
  if (change === 'filled anew') return facts.pitched ? undefined : 'filled wrongly';
  return change === 'topped up' ? 'late addition' : change === 'stirred up' ? 'stirred up' : undefined;
}

const added = (...at: Parameters<typeof isUnguarded>): Why =>
  isUnguarded(...at) ? 'sugar without guard' : 'late addition';

function notIn({ additions }: Facts, { contents }: Sachet): Why | undefined {
  if (contents.includes('yeast')) return 'yeast not in';
  const sweetened = additions.some((addition) => addition.contents.includes('sweetening pack'));
  if (isStabiliser(contents))
    return sweetened && contents.includes('sorbate') ? 'sugar without guard' : 'stabiliser not in';
  return contents.some((one) => one.endsWith('finings') || one === 'sweetening pack')
    ? 'finings not in'
    : undefined;
}

/** Sugar is guarded where dryness had been proven on the way when it went in, and every sorbate of the sheet was in. */
export function isUnguarded(
  { sachets }: KitSheet,
  facts: Facts,
  place: Where,
  { contents }: Sachet,
  takenAt: Instant | undefined,
): boolean {
  if (!contents.includes('sweetening pack')) return false;
  const sorbates = sachets.filter((sachet) => sachet.contents.includes('sorbate'));
  const proven = facts.passed['proving dry'];
  const wasThere = ({ at }: Moment): boolean => takenAt === undefined || at <= takenAt;
  const wasIn = (id: string): boolean =>
    facts.additions.some((addition) => addition.sachet === id && wasThere(addition));
  return (
    COURSE.indexOf(place) <= COURSE.indexOf('stabilise') ||
    proven === undefined ||
    !wasThere(proven) ||
    sorbates.some(({ id }) => !wasIn(id))
  );
}

/** What kind of sachet a mishap is about, where it can only be one kind. */
const KINDS: Partial<Record<Mishap, (sachet: Sachet) => boolean>> = {
  'stabiliser too early': ({ contents }) => isStabiliser(contents),
  'sweetening too early': ({ contents }) => contents.includes('sweetening pack'),
  'one of a pair': ({ contents }) => isStabiliser(contents),
  'finings reversed': ({ contents }) => contents.some((one) => one.endsWith('finings')),
  'finings left out': ({ contents }) => contents.some((one) => one.endsWith('finings')),
  'forgot bentonite': ({ contents, when }) => contents.includes('bentonite') && when === 'mix',
  'forgot yeast': ({ contents }) => contents.includes('yeast'),
  'pitched again': ({ contents }) => contents.includes('yeast'),
};

/** The sachets of a sheet that a mishap can be about. */
export const sachetsToTell = ({ sachets }: KitSheet, mishap: Mishap): Sachet[] =>
  sachets.filter((sachet) => KINDS[mishap]?.(sachet) ?? true);

/** The sachet that is told of; where only one kind can be meant, the first of it needs no naming. */
export function toldSachet(sheet: KitSheet, facts: Facts, { mishap, sachet }: Telling): Sachet | undefined {
  if (sachet !== undefined) return sheet.sachets.find(({ id }) => id === sachet);
  if (!NEEDS_NO_NAME.has(mishap)) return undefined;
  const kind = sachetsToTell(sheet, mishap);
  const wantsIn = MISHAPS[mishap].change === 'sachet not in';
  return kind.find(({ id }) => isIn(facts, id) === wantsIn) ?? kind[0];
}

const NEEDS_NO_NAME: ReadonlySet<Mishap> = new Set<Mishap>([
  'sweetening too early',
  'forgot bentonite',
  'forgot yeast',
  'pitched again',
]);
