import { describe, expect, test } from 'vitest';
import { makerAt } from '../../tests/story/scene';
import { Play } from '../../tests/story/play';
import type { GuideReport } from './guide-events';

/** Seconds before the next reading is due. */
const BEFORE = 20;

/** A maker who takes a reading of their own shortly before the next act falls due. */
async function shortlyBefore(): Promise<Play> {
  const maker = makerAt('ferment', 'read towards dry 1');
  maker.waitUntil(maker.act?.due ?? maker.now.at).wait(-BEFORE / 3600);
  const play = Play.with(maker);
  await play.listens();
  await play.says('new reading');
  play.script.length = 0;
  return play;
}

describe('an act that falls due while a reading is told', () => {
  test('waits until it is told; nothing that was said is asked again', async () => {
    const play = await shortlyBefore();
    await play.tells(1.012);
    await play.waits(BEFORE);
    play.looks();
    expect(play.context).toMatchObject({ stage: 'dictating', dictation: { answers: { reading: 10_120 } } });
    await play.tells(20);
    play.looks();
    await play.tells(21);
    await play.says('yes');
    await play.says('yes');
    play.looks();
    expect(play.context.stage).toBe('reading back');
    await play.says('yes');
    expect(play.maker.facts.readings.at(-1)).toMatchObject({ read: 10_120 });
  });

  test('is taken up once nobody has said anything for a minute', async () => {
    const play = await shortlyBefore();
    await play.tells(1.012);
    await play.waits(BEFORE);
    play.looks();
    await play.waits(90);
    play.looks();
    expect(play.context.dictation).toBeUndefined();
    expect(play.context.situation?.now?.act.id).toBe('read towards dry 1');
  });

  test('waits also while a reading that was typed is read back', async () => {
    const play = await shortlyBefore();
    const { act: _, ...typed } = play.card() as Extract<GuideReport, { type: 'reading taken' }>;
    await play.types(typed);
    await play.waits(BEFORE);
    play.looks();
    expect(play.context.stage).toBe('reading back');
  });
});

test('what the batch itself has become since is taken up at once', async () => {
  const play = await shortlyBefore();
  await play.tells(1.012);
  play.maker.report({ type: 'noted', how: 'touch', text: 'another tab' });
  await play.waits(BEFORE);
  play.looks();
  expect(play.context.dictation).toBeUndefined();
});
