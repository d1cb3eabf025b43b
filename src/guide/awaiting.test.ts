import { describe, expect, test } from 'vitest';
import { at } from '../../tests/story/scene';
import { awaiting } from './awaiting';

describe('what the guide waits for', () => {
  test('is shown at every turn of a sachet and a stir', async () => {
    const play = await at('stabilise', 'add sachet sorbate');
    const seen = [awaiting(play.context)];
    for (const command of ['ready', 'done', 'yes', 'start', 'wait', 'go on'] as const) {
      await play.says(command);
      await play.waits(1);
      seen.push(awaiting(play.context));
      await play.hearsOut();
      seen.push(awaiting(play.context));
    }
    await play.waits(130);
    expect([...seen, awaiting(play.context)]).toEqual([
      'ready',
      ...['saying', 'the maker'],
      ...['saying', 'yes or no'],
      ...['saying', 'the maker'],
      ...['stirring', 'stirring'],
      ...['saying', 'go on'],
      ...['stirring', 'stirring'],
      'time up',
    ]);
  });
});
