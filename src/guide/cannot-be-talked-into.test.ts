import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createActor } from 'xstate';
import { Maker } from '../../tests/story/maker';
import { words } from '../../tests/story/play';
import type { Celsius, Instant, Litres } from '../domain/unit';
import { builtInSheets } from '../procedure/kits';
import { isGate } from '../procedure/phase';
import { isIrreversible } from '../procedure/step';
import { COMMANDS, type Command } from '../voice/commands';
import type { GuideContext } from './guide-context';
import type { GuideEvent, GuideReport } from './guide-events';
import { guideMachine } from './guide-machine';
import { offered } from './offered';
import { situationOf } from './situation-of';

const RUNS = process.env['NIGHTLY'] === '1' ? 5000 : 150;
/** Every batch just before something that cannot be taken back. */
const SCENES = builtInSheets.flatMap((sheet) => {
  const scenes: Maker[] = [];
  const maker = new Maker(sheet);
  while (maker.place !== 'stand' && maker.place !== 'label') {
    if (maker.act && isIrreversible(maker.act)) scenes.push(standIn(maker));
    if (isGate(maker.place)) maker.prove(maker.place);
    else maker.answer();
  }
  return scenes;
});

/** The same batch at the same moment, to be led elsewhere. */
function standIn({ sheet, snapshot, now }: Maker): Maker {
  return Object.assign(new Maker(sheet), { snapshot, now });
}

/** What may come at the guide: commands on offer or not, lines that get out or do not, cards, ticks, and time. */
type Blow =
  | { blow: 'any command'; command: Command; how: 'voice' | 'touch' }
  | { blow: 'offered command'; nth: number }
  | { blow: 'said' | 'tick' }
  | { blow: 'wait'; seconds: number }
  | { blow: 'draft'; type: 'act done' | 'temperature taken' | 'litres measured' };

const anyBlow: fc.Arbitrary<Blow> = fc.oneof(
  {
    weight: 2,
    arbitrary: fc.record({
      blow: fc.constant('any command' as const),
      command: fc.constantFrom(...COMMANDS),
      how: fc.constantFrom('voice' as const, 'touch' as const),
    }),
  },
  {
    weight: 4,
    arbitrary: fc.record({
      blow: fc.constant('offered command' as const),
      nth: fc.constantFrom(0, 0, 0, 0, 1, 3),
    }),
  },
  {
    weight: 4,
    arbitrary: fc.record({ blow: fc.constantFrom('said' as const, 'said' as const, 'tick' as const) }),
  },
  {
    weight: 1,
    arbitrary: fc.record({ blow: fc.constant('wait' as const), seconds: fc.constantFrom(1, 9, 40, 300) }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      blow: fc.constant('draft' as const),
      type: fc.constantFrom('act done' as const, 'temperature taken' as const, 'litres measured' as const),
    }),
  },
);

/** What came out of one blow, and what the guide was about when it came. */
type Answer = {
  event: GuideEvent;
  before: GuideContext;
  reports: GuideReport[];
  irreversible: boolean;
  tones: string[];
};

/** A guide under blows, at a batch that takes what follows and refuses the rest. */
function under(scene: number, blows: readonly Blow[]): Answer[] {
  const maker = standIn(SCENES[scene]!);
  const actor = createActor(guideMachine, { input: { words, at: maker.now.at } });
  const out = { reports: [] as GuideReport[], tones: [] as string[] };
  actor.on('report', ({ report }) => out.reports.push(report));
  actor.on('tone', ({ tone }) => out.tones.push(tone));
  actor.start();
  const tell = () =>
    actor.send({
      type: 'situation',
      situation: situationOf(maker.snapshot, maker.now, words),
      at: maker.now.at,
    });
  tell();
  return blows.map((blow) => {
    const before = actor.getSnapshot().context;
    const event = eventOf(blow, maker, before);
    Object.assign(out, { reports: [], tones: [] });
    actor.send(event);
    const { reports, tones } = out;
    const irreversible = reports.some(
      (report) => report.type === 'act done' && report.act === maker.act?.id && isIrreversible(maker.act),
    );
    for (const report of reports) {
      const problem = maker.report(report as never);
      if (problem) actor.send({ type: 'refused', problem, at: maker.now.at });
      else tell();
    }
    return { event, before, reports, irreversible, tones };
  });
}

function eventOf(blow: Blow, maker: Maker, context: GuideContext): GuideEvent {
  const seconds = blow.blow === 'wait' ? blow.seconds : 0.25;
  maker.now = { ...maker.now, at: (maker.now.at + seconds * 1000) as Instant };
  const { at } = maker.now;
  if (blow.blow === 'any command') return { type: blow.command, how: blow.how, at };
  if (blow.blow === 'offered command') return { type: offered(context)[blow.nth] ?? 'again', how: 'key', at };
  if (blow.blow === 'said') return { type: 'said', utterance: context.utterance, at };
  if (blow.blow !== 'draft') return { type: 'tick', at };
  const answer = { act: maker.act?.id ?? 'none', celsius: 21 as Celsius, litres: 20 as Litres };
  return { type: 'draft', report: { type: blow.type, how: 'touch', ...answer } as GuideReport, at };
}

describe('the guide cannot be talked into', () => {
  const cases = fc.tuple(fc.nat(SCENES.length - 1), fc.array(anyBlow, { minLength: 20, maxLength: 120 }));
  const always = (holds: (answer: Answer) => void) =>
    fc.assert(
      fc.property(cases, ([scene, blows]) => under(scene, blows).forEach(holds)),
      { numRuns: RUNS },
    );

  test('ending a batch, striking a reading, or giving a reason in the maker’s name', () => {
    always(({ reports }) =>
      expect(reports.filter(({ type }) => ['ended', 'reading struck', 'noted'].includes(type))).toEqual([]),
    );
  });

  test('a sachet, or filled bottles, that were not read back to the end and then answered with yes', () => {
    let counted = 0;
    always(({ event, before, irreversible }) => {
      if (!irreversible) return;
      counted += 1;
      expect([before.stage, before.told, event.type]).toEqual(['reading back', true, 'yes']);
    });
    // Often enough for the rule to have been asked.
    expect(counted).toBeGreaterThan(5);
  });

  test('hearing what is not on offer, or being deaf to what is', () => {
    const commands: ReadonlySet<string> = new Set(COMMANDS);
    always(({ event, before, tones }) => {
      if (!commands.has(event.type)) return;
      const isOffered = offered(before).includes(event.type as Command);
      expect([event.type, before.stage, tones.includes('not heard')]).toEqual([
        event.type,
        before.stage,
        !isOffered,
      ]);
    });
  });
});
