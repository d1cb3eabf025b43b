import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createActor } from 'xstate';
import { Maker } from '../../tests/story/maker';
import { words } from '../../tests/story/play';
import type { Celsius, Instant, Litres } from '../domain/unit';
import { isIrreversible } from '../procedure/step';
import { builtInSheets } from '../procedure/kits';
import { COMMANDS, type Command } from '../voice/commands';
import type { GuideEvent, GuideOut, GuideReport } from './guide-events';
import { guideMachine } from './guide-machine';
import { offered } from './offered';
import { situationOf } from './situation-of';

const RUNS = process.env['NIGHTLY'] === '1' ? 5000 : 150;
const PLACES = ['mix', 'pitch', 'stabilise', 'fine', 'bottle'] as const;

/** What may come at the guide: commands in any order, lines that get out or do not, cards, ticks, and time. */
type Blow =
  | { blow: 'command'; command: Command; how: 'voice' | 'touch' }
  | { blow: 'said' | 'tick' }
  | { blow: 'wait'; seconds: number }
  | { blow: 'draft'; type: 'act done' | 'temperature taken' | 'litres measured' };

const anyBlow: fc.Arbitrary<Blow> = fc.oneof(
  { weight: 6, arbitrary: fc.record({ blow: fc.constant('command' as const), command: fc.constantFrom(...COMMANDS), how: fc.constantFrom('voice' as const, 'touch' as const) }) },
  { weight: 5, arbitrary: fc.record({ blow: fc.constantFrom('said' as const, 'tick' as const) }) },
  { weight: 1, arbitrary: fc.record({ blow: fc.constant('wait' as const), seconds: fc.constantFrom(1, 9, 40, 300) }) },
  { weight: 1, arbitrary: fc.record({ blow: fc.constant('draft' as const), type: fc.constantFrom('act done' as const, 'temperature taken' as const, 'litres measured' as const) }) },
);

type Seen = { report: GuideReport; irreversible: boolean; stage: string; told: boolean; by: string };

/** Everything that is reported while blows rain on a guide at one place, and in which stage each was. */
function reportsUnder(sheetAt: number, place: (typeof PLACES)[number], blows: readonly Blow[]): Seen[] {
  const maker = new Maker(builtInSheets[sheetAt]!).goTowards(place);
  const actor = createActor(guideMachine, { input: { words, at: maker.now.at } });
  const pending: GuideReport[] = [];
  actor.on('*' as 'report', (out: GuideOut) => out.type === 'report' && pending.push(out.report));
  actor.start();
  const seen: Seen[] = [];
  const tell = () => actor.send({ type: 'situation', situation: situationOf(maker.snapshot, maker.now, words), at: maker.now.at });
  const send = (event: GuideEvent) => {
    const { stage, told } = actor.getSnapshot().context;
    actor.send(event);
    for (const report of pending.splice(0)) {
      const act = 'act' in report && report.act === maker.act?.id ? maker.act : undefined;
      seen.push({ report, stage, told, by: event.type, irreversible: report.type === 'act done' && act !== undefined && isIrreversible(act) });
      const problem = maker.report(report as never);
      if (problem) actor.send({ type: 'refused', problem, at: maker.now.at });
      else tell();
    }
  };
  tell();
  for (const blow of blows) send(eventOf(blow, maker, actor.getSnapshot().context.utterance));
  return seen;
}

function eventOf(blow: Blow, maker: Maker, utterance: number): GuideEvent {
  const seconds = blow.blow === 'wait' ? blow.seconds : 0.25;
  maker.now = { ...maker.now, at: (maker.now.at + seconds * 1000) as Instant };
  const { at } = maker.now;
  const act = maker.act?.id ?? 'none';
  if (blow.blow === 'command') return { type: blow.command, how: blow.how, at };
  if (blow.blow === 'said') return { type: 'said', utterance, at };
  if (blow.blow !== 'draft') return { type: 'tick', at };
  const answer = { celsius: 21 as Celsius, litres: 20 as Litres };
  return { type: 'draft', report: { type: blow.type, how: 'touch', act, ...answer } as GuideReport, at };
}

describe('the guide cannot be talked into', () => {
  const cases = fc.tuple(fc.nat(2), fc.constantFrom(...PLACES), fc.array(anyBlow, { minLength: 20, maxLength: 160 }));

  test('ending a batch, striking a reading, or a sachet that was not read back and answered with yes', () => {
    let irreversible = 0;
    fc.assert(
      fc.property(cases, ([sheet, place, blows]) => {
        const seen = reportsUnder(sheet, place, blows);
        irreversible += seen.filter((each) => each.irreversible).length;
        expect(seen.filter(({ report }) => ['ended', 'reading struck', 'noted'].includes(report.type))).toEqual([]);
        expect(
          seen.filter((each) => each.irreversible && !(each.stage === 'reading back' && each.told && each.by === 'yes')),
        ).toEqual([]);
      }),
      { numRuns: RUNS },
    );
    expect(irreversible).toBeGreaterThan(5);
  });

  test('hearing what is not on offer, or not hearing what is', () => {
    fc.assert(
      fc.property(cases, ([sheet, place, blows]) => {
        const maker = new Maker(builtInSheets[sheet]!).goTowards(place);
        const actor = createActor(guideMachine, { input: { words, at: maker.now.at } });
        const tones: string[] = [];
        actor.on('tone', ({ tone }) => tones.push(tone));
        actor.start();
        actor.send({ type: 'situation', situation: situationOf(maker.snapshot, maker.now, words), at: maker.now.at });
        for (const blow of blows) {
          const { context } = actor.getSnapshot();
          const event = eventOf(blow, maker, context.utterance);
          const isOffered = offered(context).includes(event.type as Command);
          tones.length = 0;
          actor.send(event);
          if (blow.blow === 'command') expect([event.type, tones.includes('not heard')]).toEqual([event.type, !isOffered]);
        }
      }),
      { numRuns: RUNS },
    );
  });
});
