import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { draws, PATIENCE } from '../../tests/story/draws';
import { FakeEars } from '../../tests/story/fake-ears';
import { Maker } from '../../tests/story/maker';
import { Play } from '../../tests/story/play';
import { sealBroken } from '../../tests/story/seals';
import { MISHAP_IDS } from '../procedure/mishap';
import { builtInSheets } from '../procedure/kits';
import { isGate } from '../procedure/phase';
import { isIrreversible } from '../procedure/step';
import { en } from '../text/en';
import { DECOYS } from '../voice/decoys';
import { asHeard } from '../voice/grammar-for';
import type { BatchEvent } from '../workflow/batch-event';

/** Every batch where something follows that cannot be taken back, and at every gate before it, shut. */
const SCENES: readonly Maker[] = builtInSheets.flatMap((sheet) => {
  const scenes: Maker[] = [];
  const maker = new Maker(sheet);
  while (maker.place !== 'stand' && maker.place !== 'label') {
    if (isGate(maker.place) || (maker.act && isIrreversible(maker.act))) scenes.push(maker.fork());
    if (isGate(maker.place)) maker.prove(maker.place);
    else maker.answer();
  }
  return scenes;
});

type Hearing = { words: string; how: 'surely' | 'barely' | 'not'; seconds: number };

const YES = en.guide.commands.yes.map(asHeard);
const PHRASES = Object.values(en.guide.commands).flat().map(asHeard);
const MISHAPS = MISHAP_IDS.map((mishap) => asHeard(en.whatHappened.mishaps[mishap].spoken));
const NUMBERS = [
  'nine nine four',
  'nine ninety five',
  'ten fifty',
  'twenty one',
  'eighteen and a half',
  'thirty',
];
const ONWARDS = ['done', 'ready', 'start', 'yes', 'go on', 'new reading'] as const;

const anyHearing: fc.Arbitrary<Hearing> = fc.record({
  words: fc.oneof(
    { weight: 5, arbitrary: fc.constantFrom(...ONWARDS.map((each) => asHeard(en.guide.commands[each][0]!))) },
    { weight: 4, arbitrary: fc.constantFrom(...PHRASES) },
    { weight: 2, arbitrary: fc.constantFrom(...NUMBERS) },
    { weight: 1, arbitrary: fc.constantFrom(...MISHAPS) },
    { weight: 1, arbitrary: fc.constantFrom(...DECOYS) },
  ),
  how: fc.constantFrom('surely', 'surely', 'surely', 'barely', 'not'),
  // How long the maker waits before it: not at all, or until the guide has said all it has to say.
  seconds: fc.constantFrom(0, 1, 2, 30, 30, 30, 30, 400),
});

/** What a maker at a sachet says, each after the guide: without it chance would seldom come so far. */
const INTENDED = (['ready', 'done', 'yes'] as const).map((command): Hearing => ({
  words: asHeard(en.guide.commands[command][0]!),
  how: 'surely',
  seconds: 30,
}));
const anyRun = fc.oneof(
  { weight: 9, arbitrary: anyHearing.map((each) => [each]) },
  { weight: 1, arbitrary: fc.constant(INTENDED) },
);

/** What one hearing brought about, and what the guide was about when it was heard. */
type Outcome = {
  words: string;
  stage: string;
  told: boolean;
  /** The phrase that the guide read back; where it asked "did you say", the one that it asked about. */
  readBack: string;
  events: readonly BatchEvent[];
  irreversible: boolean;
  broken: string | undefined;
};

/** A guide with ears at a batch, that hears one thing after another. */
async function hearing(scene: number, heard: readonly Hearing[]): Promise<Outcome[]> {
  const play = Play.with(SCENES[scene]!.fork());
  const ears = new FakeEars();
  play.lends(ears);
  ears.becomes('listening');
  await play.hearsOut();
  const outcomes: Outcome[] = [];
  let readBack = '';
  for (const { words, how, seconds } of heard) {
    await play.waits(seconds);
    const { stage, told, unsure } = play.context;
    const { act } = play.maker;
    const already = play.maker.journal.length;
    ears.hear(words, how);
    await play.clock.pass(0);
    const events = play.maker.journal.slice(already);
    const irreversible =
      act !== undefined &&
      isIrreversible(act) &&
      events.some((event) => event.type === 'act done' && event.act === act.id);
    outcomes.push({ words, stage, told, readBack, events, irreversible, broken: sealBroken(play.maker) });
    if (stage !== 'reading back' && play.context.stage === 'reading back')
      readBack = unsure && YES.includes(words) ? asHeard(en.guide.commands[unsure][0]!) : words;
  }
  await play.hearsOut();
  play.close();
  return outcomes;
}

const NEVER: ReadonlySet<string> = new Set<BatchEvent['type']>([
  'ended',
  'reading struck',
  'overridden',
  'noted',
]);

describe('whatever is heard', () => {
  test(
    'ends, strikes and overrides nothing; what cannot be undone follows its read-back and a yes; no seal is broken',
    async () => {
      let counted = 0;
      await fc.assert(
        fc.asyncProperty(
          fc.nat(SCENES.length - 1),
          fc.array(anyRun, { minLength: 10, maxLength: 30 }).map((runs) => runs.flat()),
          async (scene, heard) => {
            for (const { words, stage, told, readBack, events, irreversible, broken } of await hearing(
              scene,
              heard,
            )) {
              expect(events.filter(({ type }) => NEVER.has(type))).toEqual([]);
              expect(broken).toBeUndefined();
              if (!irreversible) continue;
              counted += 1;
              expect([stage, told]).toEqual(['reading back', true]);
              expect(YES).toContain(words);
              expect(readBack).not.toBe('');
              expect(readBack).not.toBe(words);
            }
          },
        ),
        draws(60, 3000),
      );
      // Often enough for the rule to have been asked.
      expect(counted).toBeGreaterThan(3);
    },
    PATIENCE,
  );
});
