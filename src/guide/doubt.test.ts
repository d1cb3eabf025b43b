import { expect, test } from 'vitest';
import { Play } from '../../tests/story/play';
import { untimed } from '../../tests/story/scene';
import type { Gravity } from '../domain/gravity';
import { builtInSheets } from '../procedure/kits';
import type { GuideReport } from './guide-events';

/** At the dryness gate, after a reading that is higher than the last. */
async function doubted(): Promise<Play> {
  const play = Play.at(builtInSheets[0]!, 'proving dry');
  await play.hearsOut();
  const { confirmed: _, ...reading } = play.card() as Extract<GuideReport, { type: 'reading taken' }>;
  await play.types({ ...reading, reading: 10_040 as Gravity });
  await play.says('yes');
  await play.hearsOut();
  return play;
}

const since = (play: Play, what: string): string[] => {
  const script = untimed(play);
  return script.slice(script.indexOf(what) + 1);
};

test('a reading that went up is asked once more, and taken after a second yes', async () => {
  const play = await doubted();
  expect(since(play, 'Batch: refused (reading-went-up)')).toEqual([
    'Guide: That is 0.010 higher than the last. Is it right? ♪',
  ]);
  await play.says('yes');
  expect(untimed(play)).toContain('Batch: reading taken');
});

test('with a no it does not count', async () => {
  const play = await doubted();
  await play.says('no');
  await play.hearsOut();
  expect(untimed(play)).toContain('Guide: Then it does not count.');
  expect(untimed(play)).not.toContain('Batch: reading taken');
});
