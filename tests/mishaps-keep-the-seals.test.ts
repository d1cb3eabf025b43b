import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Celsius, Instant, Litres } from '../src/domain/unit';
import type { Gravity } from '../src/domain/gravity';
import { HOUR } from '../src/domain/calendar';
import type { KitSheet } from '../src/procedure/kit-sheet';
import { canBeTold, sachetsNow } from '../src/procedure/can-be-told';
import { finishOf } from '../src/procedure/limits';
import { MISHAP_IDS, type Mishap } from '../src/procedure/mishap';
import { COURSE, isGate, isPhase, type Gate, type Phase } from '../src/procedure/phase';
import { toldOf } from '../src/procedure/facts';
import { replay } from '../src/workflow/replay';
import { anySheet } from './story/any-sheet';
import { draws, PATIENCE } from './story/draws';
import { Maker, type Wine } from './story/maker';
import { persevere } from './story/persevere';
import { anythingBroken } from './story/seals';

type Deed =
  | { deed: 'go on' | 'go back' | 'strike' | 'well' | 'new hydrometer' }
  | { deed: 'wait'; hours: number }
  | { deed: 'read'; above: number; wine: number }
  | { deed: 'mishap'; nth: number; sachet: number; hoursAgo: number; litres: number };

const anyDeed: fc.Arbitrary<Deed> = fc.oneof(
  { weight: 10, arbitrary: fc.constant<Deed>({ deed: 'go on' }) },
  {
    weight: 2,
    arbitrary: fc.constantFrom<Deed>(
      { deed: 'go back' },
      { deed: 'strike' },
      { deed: 'well' },
      { deed: 'new hydrometer' },
    ),
  },
  {
    weight: 1,
    arbitrary: fc.record({ deed: fc.constant('wait'), hours: fc.constantFrom(1, 25, 49, 73, 200) }),
  },
  {
    weight: 3,
    arbitrary: fc.record({
      deed: fc.constant('read'),
      above: fc.constantFrom(-60, -20, -20, -12, 0, 30, 400),
      wine: fc.constantFrom(15, 22, 22),
    }),
  },
  {
    weight: 5,
    arbitrary: fc.record({
      deed: fc.constant('mishap'),
      nth: fc.nat(60),
      sachet: fc.nat(5),
      hoursAgo: fc.constantFrom(0, 0, 1, 30, 400),
      litres: fc.constantFrom(1, 5, 22),
    }),
  },
);

function does(maker: Maker, deed: Deed): void {
  const act = maker.act?.kind === 'reading' ? { act: maker.act.id } : {};
  switch (deed.deed) {
    case 'go on':
      if (isPhase(maker.place)) maker.answer();
      else if (isGate(maker.place)) maker.prove(maker.place);
      return;
    case 'go back':
      for (const clause of ['gassy', 'still-moving', 'cloudy', 'start-outside', 'no-baseline'])
        if (isGate(maker.place)) maker.report({ type: 'sent back', how: 'touch', gate: maker.place, clause });
      return;
    case 'strike':
      maker.facts.readings.slice(-1).forEach(({ entry }) => {
        maker.report({ type: 'reading struck', how: 'touch', entry, reason: 'misread it' });
      });
      return;
    case 'well':
      maker.facts.mishaps.slice(-1).forEach(({ entry }) => {
        maker.report({ type: 'looked again', how: 'touch', entry, well: true });
        maker.report({ type: 'mishap struck', how: 'touch', entry, reason: 'it was a mistake' });
      });
      return;
    case 'new hydrometer':
      maker.report({
        ...{ type: 'instrument checked', how: 'touch', division: 20, calibratedAt: 20 },
        ...{ waterReading: 10_010 as Gravity, waterCelsius: 20 as Celsius },
      });
      return;
    case 'wait':
      maker.wait(deed.hours);
      return;
    case 'read':
      maker.read({
        ...act,
        reading: (finishOf(maker.sheet).limit + deed.above) as Gravity,
        wineCelsius: deed.wine as Celsius,
      });
      return;
    case 'mishap':
      tell(maker, deed);
  }
}

/** Most often something that can have happened there, about a sachet that it can be about; sometimes anything. */
function tell(maker: Maker, { nth, sachet, hoursAgo, litres }: Extract<Deed, { deed: 'mishap' }>): void {
  const { sheet, facts, place } = maker;
  const likely = canBeTold(sheet, facts, place);
  const mishap =
    (nth % 10 > 0 ? likely[nth % Math.max(1, likely.length)] : undefined) ?? among(MISHAP_IDS, nth);
  const sachets = nth % 7 > 0 ? sachetsNow(sheet, facts, mishap) : sheet.sachets;
  const takenAt = (maker.now.at - hoursAgo * HOUR) as Instant;
  const told = { type: 'mishap told', how: 'key', mishap, ...(hoursAgo > 0 ? { takenAt } : {}) } as const;
  const named = sachets.length > 0 ? { sachet: among(sachets, sachet).id } : {};
  maker.report({ ...told, ...named, litres: litres as Litres });
  maker.report({ ...told, ...named });
}

const among = <Each>(all: readonly Each[], nth: number): Each => all[nth % all.length] as Each;

const starts = fc.constantFrom<Phase | Gate>(...COURSE);

/** Dry within half a day, so that every sheet's first reading already finds it so. */
const quickWine = (sheet: KitSheet): Wine => ({
  celsius: 22,
  gravityOn: (day) =>
    day < 0.5 ? (sheet.start.lowest + sheet.start.highest) / 2 : (finishOf(sheet).limit - 20) / 10_000,
});

test(
  'whatever the sheet and whatever goes wrong, no seal is broken, no dose given twice, and no batch lost',
  { timeout: PATIENCE },
  () => {
    const seen = { told: new Set<Mishap>(), sealed: new Set<string>() };
    const watch = (maker: Maker): string | undefined => {
      maker.facts.mishaps.forEach(({ mishap }) => seen.told.add(mishap));
      if (maker.act?.sealed && maker.facts.mishaps.length > 0) seen.sealed.add(maker.place);
      return anythingBroken(maker);
    };
    fc.assert(
      fc.property(anySheet, starts, fc.array(anyDeed, { maxLength: 50 }), (sheet, start, deeds) => {
        const maker = new Maker(sheet, quickWine(sheet)).goTowards(start);
        for (const deed of deeds) {
          does(maker, deed);
          expect(watch(maker)).toBeUndefined();
        }
        const glass = toldOf(maker.facts, 'hydrometer in the wine').length > 0;
        expect(glass ? undefined : persevere(maker, watch)).toBeUndefined();
        expect(replay(maker.input, maker.journal)).toEqual({ snapshot: maker.snapshot });
      }),
      draws(300, 5000),
    );
    expect([...seen.sealed].toSorted()).toEqual(['bottle', 'fine', 'stabilise']);
    expect(seen.told.size).toBeGreaterThan(25);
  },
);
