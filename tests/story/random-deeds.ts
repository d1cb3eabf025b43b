import fc from 'fast-check';
import { HOUR } from '../../src/domain/calendar';
import type { Gravity } from '../../src/domain/gravity';
import type { Problem } from '../../src/domain/problem';
import { standing } from '../../src/domain/reading';
import type { Celsius, Instant } from '../../src/domain/unit';
import { asOf } from '../../src/procedure/facts';
import { judge } from '../../src/procedure/judge';
import { isGate, isPhase, type Gate } from '../../src/procedure/phase';
import { REMEDIES } from '../../src/workflow/remedies';
import type { Maker } from './maker';

/** What a maker may do next, sensible or not. */
export type Deed =
  | {
      deed:
        'answers' | 'proves the gate' | 'strikes the last reading' | 'goes back' | 'presses on' | 'insists';
    }
  | { deed: 'waits'; hours: number }
  | { deed: 'reads'; gravity: number; sample: number; wine: number; degassed: boolean; hoursAgo: number }
  | { deed: 'finds'; what: 'gas' | 'clear' | 'rush' | 'foam'; yes: boolean }
  | { deed: 'leaves out'; nth: number }
  | { deed: 'tests the sugar'; gramsPerLitre: number };

const plain = (...deeds: ('answers' | 'proves the gate')[]) =>
  fc.constantFrom(...deeds.map((deed): Deed => ({ deed })));

export const anyDeed: fc.Arbitrary<Deed> = fc.oneof(
  { weight: 12, arbitrary: plain('answers') },
  { weight: 5, arbitrary: plain('proves the gate') },
  {
    weight: 4,
    arbitrary: fc.constantFrom<Deed>(
      { deed: 'presses on' },
      { deed: 'strikes the last reading' },
      { deed: 'goes back' },
      { deed: 'insists' },
    ),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      deed: fc.constant('waits' as const),
      hours: fc.constantFrom(1, 23, 24, 47, 49, 73, 200),
    }),
  },
  {
    weight: 3,
    arbitrary: fc.record({
      deed: fc.constant('reads' as const),
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
      deed: fc.constant('finds' as const),
      what: fc.constantFrom('gas', 'clear', 'rush', 'foam'),
      yes: fc.boolean(),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.oneof(
      fc.record({ deed: fc.constant('leaves out' as const), nth: fc.nat(8) }),
      fc.record({
        deed: fc.constant('tests the sugar' as const),
        gramsPerLitre: fc.constantFrom(1, 2, 3, 40),
      }),
    ),
  },
);

const how = 'touch' as const;
const REASON = 'my own decision, for good reasons';
type Refusable = (Problem | undefined)[];

/** Tries to do it; gives what was refused. */
export function tryTo(maker: Maker, deed: Deed): Refusable {
  switch (deed.deed) {
    case 'answers':
      return maker.act ? [maker.answer()] : [];
    case 'proves the gate':
      return isPhase(maker.place) ? [] : [maker.prove(maker.place as Gate)];
    case 'presses on':
      return [pressOn(maker)];
    case 'insists':
      return insist(maker);
    case 'strikes the last reading':
      return standing(maker.facts.readings)
        .slice(-1)
        .map(({ entry }) => maker.report({ type: 'reading struck', how, entry, reason: 'misread' }));
    case 'goes back':
      return REMEDIES.filter(({ gate }) => gate === maker.place).map(({ gate, clause }) =>
        maker.report({ type: 'sent back', how, gate, clause }),
      );
    case 'waits':
      maker.wait(deed.hours);
      return [];
    case 'finds':
      return [maker.judge(deed.what, deed.yes, maker.act?.kind === 'judge' ? maker.act.id : undefined)];
    case 'reads':
      return [read(maker, deed)];
    case 'leaves out':
      return [leaveOut(maker, deed.nth)];
    case 'tests the sugar':
      return [maker.report({ type: 'sugar tested', how, gramsPerLitre: deed.gramsPerLitre })];
  }
}

function pressOn(maker: Maker): Problem | undefined {
  if (maker.act) return maker.report({ type: 'act done', how, act: maker.act.id });
  return isPhase(maker.place) ? undefined : maker.pass(maker.place as Gate);
}

/** Overrides every clause that is in the way, those that yield to nothing as well. */
function insist(maker: Maker): Refusable {
  const question = isGate(maker.place) ? maker.place : maker.act?.check;
  const verdict = question && judge(question, maker.sheet, asOf(maker.facts, maker.now));
  if (!question || !verdict || verdict.open) return [];
  return [verdict.because, ...verdict.also].map(({ code: clause }) =>
    maker.report({ type: 'overridden', how, question, clause, reason: REASON }),
  );
}

function leaveOut(maker: Maker, nth: number): Problem | undefined {
  const sachet = maker.sheet.sachets[nth % maker.sheet.sachets.length];
  return sachet && maker.report({ type: 'left out', how, sachet: sachet.id, reason: REASON });
}

function read(maker: Maker, deed: Extract<Deed, { deed: 'reads' }>): Problem | undefined {
  const takenAt = (maker.now.at - deed.hoursAgo * HOUR) as Instant;
  return maker.read({
    reading: deed.gravity as Gravity,
    sampleCelsius: deed.sample as Celsius,
    wineCelsius: deed.wine as Celsius,
    degassed: deed.degassed,
    ...(deed.hoursAgo > 0 ? { takenAt } : {}),
    ...(maker.act?.kind === 'reading' ? { act: maker.act.id } : {}),
  });
}

/** A deed as a line of the story that a counterexample shrinks to. */
export function lineOf(maker: Maker, { deed, ...rest }: Deed, refused: Refusable): string {
  const details = Object.values(rest).join(', ');
  const said = refused.flatMap((problem) => problem?.code ?? []);
  const at = `day ${maker.day.toFixed(1)}, ${maker.place}${maker.act ? `, ${maker.act.id}` : ''}`;
  return `${deed}${details ? ` (${details})` : ''} → ${at}${said.length > 0 ? `; refused: ${said.join(', ')}` : ''}`;
}
