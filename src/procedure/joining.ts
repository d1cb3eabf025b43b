import type { Moment } from '../domain/calendar';
import type { Litres } from '../domain/unit';
import type { Addition, Facts } from './facts';
import type { KitSheet, Sachet } from './kit-sheet';
import type { Joinable } from './joinable';
import { comesAfter, PHASES, type Phase } from './phase';
import { plan } from './plan';
import type { Act } from './step';

export const isInBottles = (reached: Phase): boolean => comesAfter(reached, 'bottle');

/**
 * Where the guide takes it up: before the first gate that still means something, since no gate was judged. Wine that is
 * in its bottles has none before it.
 */
export function joinsAt(reached: Joinable): Phase {
  if (isInBottles(reached)) return reached;
  return comesAfter(reached, 'pitch') ? 'ferment' : 'mix';
}

/** What is told of a batch that runs already. A sachet of an earlier phase that is not named counts as in: it is a dose. */
export type Joining = {
  reached: Joinable;
  added: readonly { sachet: string; at?: Moment['at'] | undefined }[];
  /** Still full, in the maker's hand. */
  notIn: readonly string[];
  litres?: Litres | undefined;
  filled?: number | undefined;
};

/** What went in before the guide was told: where the day is not known, the day that the batch began. */
export const addedBefore = (sheet: KitSheet, facts: Facts, joining: Joining): Addition[] =>
  sheet.sachets
    .filter(
      ({ id, when }) =>
        !joining.notIn.includes(id) && (isNamed(joining, id) || comesAfter(joining.reached, when)),
    )
    .map(({ id, contents, when }) => ({
      ...facts.begun,
      at: joining.added.find(({ sachet }) => sachet === id)?.at ?? facts.begun.at,
      entry: facts.entries,
      sachet: id,
      contents,
      phase: when,
      ...(contents.includes('sweetening pack') && !isGuardedBy(sheet, joining)
        ? { unguarded: true as const }
        : {}),
    }));

const isNamed = ({ added }: Joining, id: string): boolean => added.some(({ sachet }) => sachet === id);

/** Sugar counts as guarded only behind every stabiliser with sorbate, each of them named: what is unknown is no evidence. */
const isGuardedBy = ({ sachets }: KitSheet, joining: Joining): boolean =>
  sachets.every(({ id, contents }) => !contents.includes('sorbate') || isNamed(joining, id));

/** When the yeast went in: on its day where that is known; else its days count from now. */
export function pitchedBefore(sheet: KitSheet, facts: Facts, joining: Joining): Moment | undefined {
  const yeasts = sheet.sachets.filter(({ contents }) => contents.includes('yeast'));
  if (!yeasts.some(({ id }) => facts.additions.some(({ sachet }) => sachet === id))) return undefined;
  const at = joining.added.find(({ sachet }) => yeasts.some(({ id }) => id === sachet))?.at;
  return { ...facts.now, at: at ?? facts.now.at };
}

const WORK: readonly Act['kind'][] = ['do', 'stir', 'timer', 'wait', 'litres'];

/** The work that lies behind a batch that has come so far. Readings, tests and looks are evidence: those are not. */
export function workBehind(sheet: KitSheet, facts: Facts, reached: Joinable): string[] {
  const phases = PHASES.filter(
    (phase) => !comesAfter('mix', phase) && (phase === 'mix' || comesAfter(reached, phase)),
  );
  return phases.flatMap((phase) => {
    const acts = plan(phase, sheet, facts);
    const mixed = acts.findIndex(({ step }) => step === 'stir must');
    const behind = phase === 'mix' && !comesAfter(reached, 'pitch') ? acts.slice(0, mixed) : acts;
    return behind.filter(({ kind }) => WORK.includes(kind)).map(({ id }) => id);
  });
}

/** The acts of a sachet that is in. */
export const actsOf = ({ id }: Pick<Sachet, 'id'>): string[] => [
  `add sachet ${id}`,
  `stir in ${id}`,
  `wait after ${id}`,
];
