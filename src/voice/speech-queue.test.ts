import { describe, expect, test } from 'vitest';
import { FakeEngine } from '../../tests/story/fake-engines';
import { SimulatedClock } from '../../tests/story/simulated-clock';
import type { Heard } from './speaker';
import { FIRST_SOUND_PREFERENCES, type SoundPreferences } from '../domain/sound-preferences';
import { SpeechQueue, type Silence } from './speech-queue';

const LINES = ['Stop. Stand back.', 'Stir for two minutes.', 'Right?'];

type Scene = {
  engine: FakeEngine;
  clock: SimulatedClock;
  queue: SpeechQueue;
  captions: string[];
  silences: Silence[];
};

function scene(
  ways: ConstructorParameters<typeof FakeEngine>[1] = {},
  sound: Partial<SoundPreferences> = {},
): Scene {
  const clock = new SimulatedClock();
  const engine = new FakeEngine(clock, ways);
  const captions: string[] = [];
  const silences: Silence[] = [];
  const queue = new SpeechQueue({
    engine,
    after: clock.after,
    language: 'en',
    preferences: () => ({ ...FIRST_SOUND_PREFERENCES, ...sound }),
    caption: (line) => captions.push(line),
    silent: (why) => silences.push(why),
  });
  return { clock, engine, queue, captions, silences };
}

/** Says all lines at once, and lets a minute pass. */
async function say({ queue, clock }: Scene, lines: readonly string[] = LINES): Promise<Heard[]> {
  const how: Heard[] = [];
  lines.forEach((line, index) => void queue.say(line).then((heard) => (how[index] = heard)));
  await clock.pass(60_000);
  return how;
}

const overlaps = ({ engine: { sounded } }: Scene): string[] =>
  sounded
    .filter(({ from }, index) => index > 0 && from < (sounded[index - 1]?.until ?? Infinity))
    .map(({ words }) => words);

describe('every line is captioned exactly once, in order, and never two sound at once', () => {
  type Expected = { heard: Heard[]; sounded: string[]; silences: Silence[] };
  const captioned: Heard[] = ['captioned', 'captioned', 'captioned'];
  test.each<[string, ConstructorParameters<typeof FakeEngine>[1], Expected]>([
    [
      'a normal engine',
      {},
      {
        heard: ['spoken', 'spoken', 'spoken'],
        sounded: ['Stop.', 'Stand back.', 'Stir for two minutes.', 'Right?'],
        silences: [],
      },
    ],
    ['no voices', { voicesFrom: Infinity }, { heard: captioned, sounded: [], silences: ['no voice'] }],
    [
      'voices that come late',
      { voicesFrom: 900 },
      {
        heard: ['spoken', 'spoken', 'spoken'],
        sounded: ['Stop.', 'Stand back.', 'Stir for two minutes.', 'Right?'],
        silences: [],
      },
    ],
    [
      'an engine that starts and never ends',
      { neverEnds: true },
      { heard: captioned, sounded: [], silences: ['voice stuck'] },
    ],
    [
      'an engine that never starts',
      { neverStarts: true },
      { heard: captioned, sounded: [], silences: ['voice stuck'] },
    ],
  ])('%s', async (_, ways, { heard, sounded, silences }) => {
    const stage = scene(ways);
    stage.queue.prime();
    expect(await say(stage)).toEqual(heard);
    expect(stage.captions).toEqual(LINES);
    expect(stage.engine.sounded.map(({ words }) => words)).toEqual(sounded);
    expect(stage.silences).toEqual(silences);
    expect(overlaps(stage)).toEqual([]);
  });

  test('voices that come after all looking are used from then on', async () => {
    const stage = scene({ voicesFrom: 30_000 });
    stage.queue.prime();
    expect(await say(stage, ['One.'])).toEqual(['captioned']);
    expect(await say(stage, ['Two.'])).toEqual(['spoken']);
    expect({ silences: stage.silences, now: stage.queue.silence }).toEqual({
      silences: ['no voice'],
      now: undefined,
    });
  });

  test('an engine that hangs in the middle is given up, and that is told once', async () => {
    const stage = scene();
    stage.queue.prime();
    await say(stage, ['One.']);
    Object.assign(stage.engine, { speak: () => undefined });
    expect(await say(stage, ['Two.', 'Three.', 'Four.'])).toEqual(['captioned', 'captioned', 'captioned']);
    expect({ captions: stage.captions, silences: stage.silences }).toEqual({
      captions: ['One.', 'Two.', 'Three.', 'Four.'],
      silences: ['voice stuck'],
    });
  });
});

describe('nothing sounds', () => {
  test('before the first tap; from then on it does', async () => {
    const stage = scene();
    expect(await say(stage, ['One.'])).toEqual(['captioned']);
    stage.queue.prime();
    expect(await say(stage, ['Two.'])).toEqual(['spoken']);
    expect(stage.engine.sounded.map(({ words }) => words)).toEqual(['Two.']);
  });

  test('while it is muted, and the captions stand as long as they take to read', async () => {
    const stage = scene({}, { muted: true });
    stage.queue.prime();
    void stage.queue.say('a'.repeat(20));
    void stage.queue.say('b');
    await stage.clock.pass(1199);
    expect(stage.captions).toEqual(['a'.repeat(20)]);
    await stage.clock.pass(1);
    expect(stage.captions).toEqual(['a'.repeat(20), 'b']);
    expect(stage.engine.sounded).toEqual([]);
  });
});

describe('hush', () => {
  test('cuts what sounds, keeps the captions of what waits, and rests 60 ms before the next word', async () => {
    const stage = scene();
    const { queue, clock, engine, captions } = stage;
    queue.prime();
    await clock.pass(1000);
    const how: Heard[] = [];
    for (const line of ['A long line that will be cut.', 'Never begun.'])
      void queue.say(line).then((heard) => how.push(heard));
    await clock.pass(400);
    queue.hush();
    const hushed = clock.now();
    void queue.say('Next.').then((heard) => how.push(heard));
    await clock.pass(5000);
    expect({ how, captions, overlaps: overlaps(stage) }).toEqual({
      how: ['captioned', 'captioned', 'spoken'],
      captions: ['A long line that will be cut.', 'Never begun.', 'Next.'],
      overlaps: [],
    });
    expect(engine.sounded.at(-1)?.from).toBeGreaterThanOrEqual(hushed + 60);
  });
});
