import { describe, expect, test } from 'vitest';
import { at, untimed } from '../../tests/story/scene';
import { en } from '../text/en';

const { mishaps } = en.whatHappened;

describe('something that went wrong', () => {
  const told = async () => {
    const play = await at('bottle');
    await play.says('something went wrong');
    await play.hearsOut();
    play.script.length = 0;
    await play.types({ type: 'mishap told', how: 'touch', mishap: 'sediment stirred up' });
    await play.hearsOut();
    return play;
  };

  test('is read back, with what it changes, before it counts', async () => {
    const play = await told();
    expect(untimed(play).join('\n')).toMatch(/Right\? ♪$/);
    expect(play.maker.facts.mishaps).toEqual([]);
  });

  test('is held still after a no, and nothing is told', async () => {
    const play = await told();
    await play.says('no');
    await play.hearsOut();
    expect(play.context.stage).toBe('held');
    expect(play.maker.facts.mishaps).toEqual([]);
  });

  test('is told after a yes: what to do now is said, and the guide holds still until "go on"', async () => {
    const play = await told();
    play.script.length = 0;
    await play.says('yes');
    await play.hearsOut();
    expect(play.maker.facts.mishaps.map(({ mishap }) => mishap)).toEqual(['sediment stirred up']);
    for (const line of mishaps['sediment stirred up'].now) expect(untimed(play).join('\n')).toContain(line);
    expect(play.context.stage).toBe('held');
    await play.says('go on');
    expect(play.context.stage).not.toBe('held');
  });
});
