import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { KitSheet } from '../src/procedure/kit-sheet';
import { finishOf } from '../src/procedure/limits';
import { anySheet } from './story/any-sheet';
import { draws, PATIENCE } from './story/draws';
import { Maker, type Wine } from './story/maker';
import { anyDeed, lineOf, tryTo, type Deed } from './story/random-deeds';
import { sealBroken } from './story/seals';
import { withoutStacks } from './story/without-stacks';

/** Up to twenty journals are told of a sheet, eleven on average: the way to where they begin is walked once, and each begins on a copy. */
const MOST_A_SHEET = 20;
const JOURNALS = Number(process.env['JOURNALS'] ?? (process.env['NIGHTLY'] === '1' ? 100_000 : 5000));
/** Where the suite is run again and again on broken rules: these journals, and no story to shorten. */
const SEED = process.env['SEED'];
const drawn = (sheets: number, already: number) =>
  SEED === undefined
    ? draws(sheets, sheets, already)
    : { numRuns: sheets, seed: Number(SEED) + already, endOnFailure: true };

const STARTS = [
  'prepare',
  'ferment',
  'proving dry',
  'stabilise',
  'proving gas-free',
  'fine',
  'proving still',
  'bottle',
] as const;
type Start = (typeof STARTS)[number];

/** Dry within half a day, so that every sheet's first reading already finds it so. */
const quickWine = (sheet: KitSheet): Wine => ({
  celsius: 22,
  gravityOn: (day) =>
    day < 0.5 ? (sheet.start.lowest + sheet.start.highest) / 2 : finishOf(sheet).limit / 10_000,
});

/** One batch of a sheet led to each start in turn, and a copy of it there. */
function startsOf(sheet: KitSheet): (start: Start) => Maker {
  const maker = new Maker(sheet, quickWine(sheet));
  const there = new Map<Start, Maker>();
  return (start) => {
    for (const next of STARTS) if (!there.has(start)) there.set(next, maker.goTowards(next).fork());
    return (there.get(start) ?? maker).fork();
  };
}

type Journey = { start: Start; deeds: Deed[] };

const anyJourney: fc.Arbitrary<Journey> = fc.record({
  start: fc.constantFrom(...STARTS),
  deeds: fc.array(anyDeed, { maxLength: 60, size: 'max' }),
});

/** The story up to where a seal broke; nothing when none did. */
function brokenOn(maker: Maker, { start, deeds }: Journey, sealed: Set<string>): string | undefined {
  const lines = [`${maker.sheet.id}, from ${start}:`];
  for (const deed of deeds) {
    const refused = tryTo(maker, deed);
    lines.push(lineOf(maker, deed, refused));
    const broken = sealBroken(maker);
    if (broken) return [...lines, `BROKEN: ${broken}`].join('\n  ');
    if (maker.act?.sealed) sealed.add(maker.place);
  }
  return undefined;
}

describe('whatever the sheet and whatever the maker does', () => {
  test(
    `in ${JOURNALS} random journals no act with a stabiliser, a sweetening pack or a bottle is entered or stayed in while its verdict is shut`,
    { timeout: PATIENCE },
    () => {
      const sealed = new Set<string>();
      let journals = 0;
      const journeys = fc.array(anyJourney, { minLength: 1, maxLength: MOST_A_SHEET, size: 'max' });
      while (journals < JOURNALS)
        fc.assert(
          fc.property(anySheet, journeys, (sheet, told) => {
            const from = withoutStacks(() => startsOf(sheet));
            for (const journey of told) {
              journals += 1;
              const story = withoutStacks(() => brokenOn(from(journey.start), journey, sealed));
              if (story) throw new Error(story);
            }
          }),
          drawn(Math.ceil((JOURNALS - journals) / MOST_A_SHEET), journals),
        );
      expect([...sealed].toSorted()).toEqual(['bottle', 'fine', 'stabilise']);
    },
  );
});
