import { describe, expect, test } from 'vitest';
import type { Gravity } from '../src/domain/gravity';
import { HOUR } from '../src/domain/calendar';
import type { Celsius, Instant, Litres } from '../src/domain/unit';
import { builtInSheets } from '../src/procedure/kits';
import type { KitSheet } from '../src/procedure/kit-sheet';
import { JOINABLE, type Joinable } from '../src/procedure/joinable';
import { isInBottles } from '../src/procedure/joining';
import { comesAfter } from '../src/procedure/phase';
import type { Report } from '../src/workflow/batch-event';
import { replay } from '../src/workflow/replay';
import { Maker, type Wine } from './story/maker';
import { anotherHydrometer, persevere } from './story/persevere';

const DAY = 24 * HOUR;
const DAYS_RUNNING = 30;
/** What the wine of the story has come down to by then. */
const DRY = 9940 as Gravity;

type Joined = Extract<Report, { type: 'joined' }>;

/** A batch that has been running for a month, told by someone who knows what is in it. */
function joining(sheet: KitSheet, reached: Joinable, now: Instant): Joined {
  const since = (now - DAYS_RUNNING * DAY) as Instant;
  const dayOf = (when: KitSheet['sachets'][number]['when']): number =>
    ({ mix: 0, pitch: 0, ferment: 4, stabilise: 21, fine: 22, clear: 23, bottle: 29 })[when];
  const inBy = ({ when }: KitSheet['sachets'][number]): boolean => comesAfter(reached, when);
  return {
    type: 'joined',
    how: 'key',
    since,
    reached,
    added: sheet.sachets
      .filter(inBy)
      .map(({ id, when }) => ({ sachet: id, at: (since + dayOf(when) * DAY) as Instant })),
    notIn: sheet.sachets.filter((sachet) => !inBy(sachet)).map(({ id }) => id),
    ...(isInBottles(reached) ? { filled: 29 } : { litres: 21.5 as Litres }),
  };
}

function joined(sheet: KitSheet, reached: Joinable): Maker {
  const maker = new Maker(sheet);
  expect(maker.report(joining(sheet, reached, maker.now.at))).toBeUndefined();
  return maker;
}

/** The past readings that the maker has on paper. */
function tellPastReadings(maker: Maker): void {
  maker.report(anotherHydrometer);
  const told = (day: number, reading: Gravity) =>
    maker.read({ reading, takenAt: (maker.now.at - (DAYS_RUNNING - day) * DAY) as Instant });
  told(0.1, Math.round(maker.sheet.start.lowest * 10_000) as Gravity);
  told(15, DRY);
  told(18, DRY);
  told(20, DRY);
}

const inFerment: readonly Joinable[] = JOINABLE.filter(
  (reached) => comesAfter(reached, 'pitch') && !isInBottles(reached),
);

describe.each(builtInSheets)('joining a batch of $name that is running already', (sheet) => {
  /** Caps need no standing, so there a batch that stands goes on to its labels. */
  const takenUpAt = (reached: Joinable): string => {
    if (reached === 'stand' && sheet.bottle.closure !== 'cork') return 'label';
    if (isInBottles(reached)) return reached;
    return inFerment.includes(reached) ? 'ferment' : 'mix';
  };

  test.each(JOINABLE)('as far as %s: is taken up before the first gate that means something', (reached) =>
    expect(joined(sheet, reached).place).toBe(takenUpAt(reached)),
  );

  test.each(JOINABLE)('as far as %s: comes to its end, under every seal', (reached) => {
    const maker = joined(sheet, reached);
    if (inFerment.includes(reached)) tellPastReadings(maker);
    expect(persevere(maker)).toBeUndefined();
    expect(maker.place).toBe('finished');
    expect(replay(maker.input, maker.journal)).toEqual({ snapshot: maker.snapshot });
  });

  test.each(inFerment)('as far as %s: nothing goes in twice', (reached) => {
    const maker = joined(sheet, reached);
    tellPastReadings(maker);
    persevere(maker);
    const doses = maker.facts.additions.map(({ sachet }) => sachet);
    expect(doses.length).toBe(new Set(doses).size);
  });
});

const [hedge] = builtInSheets.filter(({ id }) => id === 'hedge-lantern') as [KitSheet];

describe('what is unknown', () => {
  const unknown = (reached: Joinable, wine?: Wine): Maker => {
    const maker = new Maker(hedge, wine);
    const since = (maker.now.at - DAYS_RUNNING * DAY) as Instant;
    maker.report({ type: 'joined', how: 'key', since, reached, added: [], notIn: [], litres: 22 as Litres });
    return maker;
  };

  test('counts as in where it is a dose of an earlier phase', () =>
    expect(unknown('degas').facts.additions.map(({ sachet }) => sachet)).toEqual(
      hedge.sachets.filter(({ when }) => comesAfter('degas', when)).map(({ id }) => id),
    ));

  test('counts as not shown where it is evidence: the days of the yeast begin anew, and no gate is passed', () => {
    const { facts } = unknown('clear');
    expect({ pitched: facts.pitched?.at, passed: facts.passed, readings: facts.readings }).toEqual({
      pitched: facts.now.at,
      passed: {},
      readings: [],
    });
  });

  test('never guards a sweetened wine: without readings from before the pack it is kept, not bottled', () => {
    const maker = unknown('clear', { celsius: 21, gravityOn: () => 1.01 });
    for (let acts = 0; maker.place === 'ferment' && acts < 50; acts += 1) maker.answer();
    expect(maker.place).toBe('proving dry');
    expect(maker.pass('proving dry')?.code).toBe('not-dry');
    const kept = {
      type: 'ended',
      how: 'key',
      end: 'kept unbottled',
      reason: 'nobody wrote it down',
    } as const;
    expect(maker.report(kept)).toBeUndefined();
  });
});

describe('a batch cannot be joined', () => {
  const maker = new Maker(hedge);
  const good = joining(hedge, 'ferment', maker.now.at);
  const soon = (maker.now.at + HOUR) as Instant;
  const long = (maker.now.at - 90 * DAY) as Instant;

  test.each<[why: string, told: Joined, code: string]>([
    ['by voice', { ...good, how: 'voice' }, 'not-by-voice'],
    ['that begins in the future', { ...good, since: soon }, 'in-the-future'],
    [
      'with a sachet from before it began',
      { ...good, added: [{ sachet: 'yeast', at: long }] },
      'before-the-batch',
    ],
    ['with a sachet that its sheet does not have', { ...good, notIn: ['moonshine'] }, 'not-on-sheet'],
    ['that ferments without yeast', { ...good, added: [], notIn: ['yeast'] }, 'yeast-and-place-disagree'],
    ['before its yeast, with yeast in it', { ...good, reached: 'mix' }, 'yeast-and-place-disagree'],
    [
      'without knowing how much there is',
      { ...joining(hedge, 'rest', maker.now.at), filled: undefined },
      'how-many-litres',
    ],
  ])('%s', (_, told, code) => {
    const before = maker.facts;
    expect(maker.report(told)?.code).toBe(code);
    expect(maker.facts).toBe(before);
  });

  test('after anything else was told', () => {
    const begun = new Maker(hedge);
    begun.answer();
    expect(begun.report(joining(hedge, 'ferment', begun.now.at))?.code).toBe('joins-too-late');
  });
});

test('bottles of a joined batch that are poured back must be proven dry first', () => {
  const maker = joined(hedge, 'rest');
  expect(maker.report({ type: 'mishap told', how: 'key', mishap: 'poured back' })).toBeUndefined();
  expect(maker.place).toBe('proving dry');
});

test('a reading of a joined batch counts only once its hydrometer was checked', () => {
  const maker = joined(hedge, 'ferment');
  const cold = { wineCelsius: 20 as Celsius };
  expect(maker.read(cold)?.code).toBe('hydrometer-not-checked');
  expect(maker.report(anotherHydrometer)).toBeUndefined();
  expect(maker.read(cold)).toBeUndefined();
});
