import { describe, expect, test } from 'vitest';
import { FakeEngine } from '../../tests/story/fake-engines';
import { SimulatedClock } from '../../tests/story/simulated-clock';
import { FIRST_SOUND_PREFERENCES, type SoundPreferences } from '../domain/sound-preferences';
import type { Utterance } from './engine';
import { SoundCheck } from './sound-check';
import type { Heard } from './speaker';

const LINE = 'Stir for two minutes.';

function scene(ways: ConstructorParameters<typeof FakeEngine>[1] = {}) {
  const clock = new SimulatedClock();
  const engine = new FakeEngine(clock, ways);
  const asked: Utterance[] = [];
  const chosen: SoundPreferences = { ...FIRST_SOUND_PREFERENCES };
  const check = new SoundCheck({
    engine: {
      voices: engine.voices,
      cancel: engine.cancel,
      speak: (utterance, told) => {
        asked.push(utterance);
        engine.speak(utterance, told);
      },
    },
    after: clock.after,
    language: 'en',
    preferences: () => chosen,
  });
  const heard: Heard[] = [];
  const say = async (milliseconds: number) => {
    void check.say(LINE).then((how) => heard.push(how));
    await clock.pass(milliseconds);
  };
  return { chosen, engine, asked, heard, say };
}

describe('the trial of a voice', () => {
  test('speaks the line as is chosen now', async () => {
    const { chosen, asked, heard, say } = scene();
    await say(10_000);
    Object.assign(chosen, { rate: 1.4, volume: 0.3, voice: 'anna' });
    await say(10_000);
    const [, first, second] = asked;
    const line = { words: LINE, language: 'en', voice: 'anna' };
    expect([first, second]).toEqual([
      { ...line, rate: 1, volume: 1 },
      { ...line, rate: 1.4, volume: 0.3 },
    ]);
    expect(heard).toEqual(['spoken', 'spoken']);
  });

  test('cuts off the line before', async () => {
    const { engine, heard, say } = scene();
    await say(600);
    await say(10_000);
    expect(engine.sounded.map(({ words, cut }) => ({ words, cut: cut ?? false }))).toEqual([
      { words: LINE, cut: true },
      { words: LINE, cut: false },
    ]);
    expect(heard).toEqual(['captioned', 'spoken']);
  });

  test('says nothing while it is muted', async () => {
    const { chosen, engine, heard, say } = scene();
    chosen.muted = true;
    await say(10_000);
    expect({ sounded: engine.sounded, heard }).toEqual({ sounded: [], heard: ['captioned'] });
  });

  test('asks a voice that hung again at the next press', async () => {
    const { asked, heard, say } = scene({ neverStarts: true });
    await say(20_000);
    const before = asked.length;
    await say(20_000);
    expect(heard).toEqual(['captioned', 'captioned']);
    expect(asked.length).toBeGreaterThan(before);
  });
});
