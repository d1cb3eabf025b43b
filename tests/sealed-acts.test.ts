import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { HOUR } from '../src/domain/calendar';
import type { Gravity } from '../src/domain/gravity';
import type { Celsius } from '../src/domain/unit';
import type { KitSheet } from '../src/procedure/kit-sheet';
import { finishOf } from '../src/procedure/limits';
import { isPhase, type Gate } from '../src/procedure/phase';
import { anySheet } from './story/any-sheet';
import { Maker, type Wine } from './story/maker';
import { sealBroken } from './story/seals';

const RUNS = process.env['NIGHTLY'] === '1' ? 20_000 : 400;
/** A busy machine is no failure: the count of runs is what is fixed. */
const PATIENCE = 3_600_000;

/** What a maker may do next, sensible or not. */
type Deed =
  | { deed: 'answer' | 'prove' | 'strike' | 'go back' | 'press on' }
  | { deed: 'wait'; hours: number }
  | { deed: 'read'; gravity: number; sample: number; wine: number; degassed: boolean; hoursAgo: number }
  | { deed: 'judge'; what: 'gas' | 'clear' | 'rush' | 'foam'; yes: boolean };

const anyDeed: fc.Arbitrary<Deed> = fc.oneof(
  { weight: 12, arbitrary: fc.constantFrom<Deed>({ deed: 'answer' }) },
  { weight: 5, arbitrary: fc.constantFrom<Deed>({ deed: 'prove' }) },
  {
    weight: 3,
    arbitrary: fc.constantFrom<Deed>({ deed: 'press on' }, { deed: 'strike' }, { deed: 'go back' }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      deed: fc.constant('wait' as const),
      hours: fc.constantFrom(1, 23, 24, 47, 49, 73, 200),
    }),
  },
  {
    weight: 3,
    arbitrary: fc.record({
      deed: fc.constant('read' as const),
      gravity: fc.constantFrom(9850, 9900, 9935, 9940, 9945, 9952, 9960, 9975, 10000, 10100, 10400),
      sample: fc.constantFrom(12, 20, 27),
      wine: fc.constantFrom(15, 18, 21, 25),
      degassed: fc.boolean(),
      hoursAgo: fc.constantFrom(0, 0, 0, 5, 60),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      deed: fc.constant('judge' as const),
      what: fc.constantFrom('gas', 'clear', 'rush', 'foam'),
      yes: fc.boolean(),
    }),
  },
);

function act(maker: Maker, deed: Deed): void {
  const standing = maker.facts.readings.filter(({ struck }) => !struck).at(-1);
  const gate = maker.place as Gate;
  switch (deed.deed) {
    case 'answer':
      if (maker.act) maker.answer();
      return;
    case 'prove':
      if (!isPhase(maker.place)) maker.prove(maker.place as Gate);
      return;
    case 'press on':
      if (maker.act) maker.report({ type: 'act done', how: 'touch', act: maker.act.id });
      else if (!isPhase(maker.place)) maker.pass(maker.place as Gate);
      return;
    case 'strike':
      if (standing)
        maker.report({ type: 'reading struck', how: 'touch', entry: standing.entry, reason: 'misread' });
      return;
    case 'go back':
      if (isPhase(maker.place)) return;
      for (const clause of ['gassy', 'still-moving', 'cloudy', 'start-outside', 'no-baseline'])
        maker.report({ type: 'sent back', how: 'touch', gate, clause });
      return;
    case 'wait':
      maker.wait(deed.hours);
      return;
    case 'judge':
      maker.judge(deed.what, deed.yes, maker.act?.kind === 'judge' ? maker.act.id : undefined);
      return;
    case 'read':
      maker.read({
        reading: deed.gravity as Gravity,
        sampleCelsius: deed.sample as Celsius,
        wineCelsius: deed.wine as Celsius,
        degassed: deed.degassed,
        ...(deed.hoursAgo > 0 ? { takenAt: (maker.now.at - deed.hoursAgo * HOUR) as never } : {}),
        ...(maker.act?.kind === 'reading' ? { act: maker.act.id } : {}),
      });
  }
}

describe('whatever the sheet and whatever the maker does', () => {
  const starts = fc.constantFrom<Gate | 'ferment' | 'stabilise' | 'fine' | 'bottle' | 'prepare'>(
    'prepare',
    'ferment',
    'proving dry',
    'stabilise',
    'proving gas-free',
    'fine',
    'proving still',
    'bottle',
  );

  test(
    'no act with a stabiliser, a sweetening pack or a bottle is entered or stayed in while its verdict is shut',
    { timeout: PATIENCE },
    () => {
      const reached: Record<string, number> = {};
      fc.assert(
        fc.property(anySheet, starts, fc.array(anyDeed, { maxLength: 60 }), (sheet, start, deeds) => {
          const maker = new Maker(sheet, quickWine(sheet));
          maker.goTowards(start);
          for (const deed of deeds) {
            act(maker, deed);
            expect(sealBroken(maker)).toBeUndefined();
            if (maker.act?.sealed) reached[maker.place] = (reached[maker.place] ?? 0) + 1;
          }
        }),
        { numRuns: RUNS },
      );
      expect(Object.keys(reached).toSorted()).toEqual(['bottle', 'fine', 'stabilise']);
    },
  );
});

/** Dry within half a day, so that every sheet's first reading already finds it so. */
const quickWine = (sheet: KitSheet): Wine => ({
  celsius: 22,
  gravityOn: (day) =>
    day < 0.5 ? (sheet.start.lowest + sheet.start.highest) / 2 : finishOf(sheet).limit / 10_000,
});
