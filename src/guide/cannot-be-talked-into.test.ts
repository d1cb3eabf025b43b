import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createActor } from 'xstate';
import { anyBlow, eventOf, type Blow } from '../../tests/story/blows';
import { draws } from '../../tests/story/draws';
import { Maker } from '../../tests/story/maker';
import { words } from '../../tests/story/play';
import { builtInSheets } from '../procedure/kits';
import { MISHAPS } from '../procedure/mishap';
import { isGate } from '../procedure/phase';
import { isIrreversible } from '../procedure/step';
import { COMMANDS, type Command } from '../voice/commands';
import type { GuideContext } from './guide-context';
import type { GuideEvent, GuideReport } from './guide-events';
import { guideMachine } from './guide-machine';
import { offered } from './offered';
import { situationOf } from './situation-of';

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

describe('the guide cannot be talked into', () => {
  const cases = fc.tuple(fc.nat(SCENES.length - 1), fc.array(anyBlow, { minLength: 20, maxLength: 120 }));
  const always = (holds: (answer: Answer) => void) =>
    fc.assert(
      fc.property(cases, ([scene, blows]) => under(scene, blows).forEach(holds)),
      draws(300, 5000),
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

  test('what changes the wine, told by ear alone', () => {
    let told = 0;
    always(({ event, reports }) => {
      for (const report of reports) {
        if (report.type !== 'mishap told') continue;
        told += 1;
        expect([MISHAPS[report.mishap].changesWine, event.type]).toEqual([false, 'yes']);
      }
    });
    expect(told).toBeGreaterThan(0);
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
