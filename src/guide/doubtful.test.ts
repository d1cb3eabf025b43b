import { describe, expect, test } from 'vitest';
import { at, untimed } from '../../tests/story/scene';
import type { Play } from '../../tests/story/play';
import { earshot } from './earshot';
import { offered } from './offered';

async function listening(...where: Parameters<typeof at>): Promise<Play> {
  const play = await at(...where);
  await play.listens();
  play.script.length = 0;
  return play;
}

describe('what was not surely heard', () => {
  test('is asked about, and counts as said only after a yes', async () => {
    const play = await listening('clean', 'rinse gear 1');
    await play.mayHaveSaid('done');
    expect(untimed(play)).toEqual(['Guide: Did you say: that is done?']);
    await play.says('yes');
    expect(untimed(play)).toContain('Batch: act done, rinse gear 1');
  });

  test('is dropped after a no', async () => {
    const play = await listening('clean', 'rinse gear 1');
    await play.mayHaveSaid('done');
    await play.says('no');
    await play.says('yes');
    expect(untimed(play)).not.toContain('Batch: act done, rinse gear 1');
  });

  test('answers to nothing once the ears are off, where it was a word for them alone', async () => {
    const play = await listening('clean', 'rinse gear 1');
    await play.mayHaveSaid('stop listening');
    expect(offered(play.context)).toEqual(expect.arrayContaining(['yes', 'no']));
    await play.listens(false);
    expect(offered(play.context)).not.toContain('yes');
    expect(offered(play.context)).toContain('done');
  });

  test('is read back all the same where it matters', async () => {
    const play = await listening('stabilise', 'add sachet sorbate');
    await play.says('ready');
    await play.hearsOut();
    await play.mayHaveSaid('done');
    await play.says('yes');
    expect(untimed(play).filter((line) => line.startsWith('Batch'))).toEqual([]);
    expect(play.context.stage).toBe('reading back');
  });

  test.each(['yes', 'no'] as const)('is not asked about where it is the answer: %s', async (answer) => {
    const play = await listening('stabilise', 'add sachet sorbate');
    await play.says('ready');
    await play.says('done');
    await play.mayHaveSaid(answer);
    expect(untimed(play).at(-1)).toBe('♪: not heard');
  });

  test('is not asked about when it is not on offer', async () => {
    const play = await listening('clean', 'rinse gear 1');
    await play.mayHaveSaid('finish');
    expect(untimed(play)).toEqual(['♪: not heard']);
  });
});

describe('what happened, by voice', () => {
  test('is within earshot once something went wrong, and not before', async () => {
    const play = await listening('clear');
    expect(earshot(play.context).phrases.get('the airlock ran dry')).toBeUndefined();
    await play.says('something went wrong');
    expect(earshot(play.context).phrases.get('the airlock ran dry')).toEqual({ mishap: 'airlock dry' });
    await play.says('go on');
    expect(earshot(play.context).phrases.get('the airlock ran dry')).toBeUndefined();
  });

  test('is read back, and recorded after a yes, where it changes nothing in the wine', async () => {
    const play = await listening('clear');
    await play.says('something went wrong');
    await play.saysWhatHappened('airlock dry');
    expect(play.maker.facts.mishaps).toEqual([]);
    await play.says('yes');
    expect(play.maker.facts.mishaps).toMatchObject([{ mishap: 'airlock dry' }]);
  });

  test('is only laid on the screen where it changes what is in the wine', async () => {
    const play = await listening('clear');
    await play.says('something went wrong');
    await play.saysWhatHappened('wrong sachet');
    await play.says('yes');
    expect(untimed(play)).toContain('Screen: mishap, wrong sachet');
    expect(play.maker.facts.mishaps).toEqual([]);
  });

  test('told with a hand, and answered with a voice, asks for the hand', async () => {
    const play = await listening('clear');
    await play.says('something went wrong');
    await play.types({ type: 'mishap told', how: 'touch', mishap: 'topped up unasked', litres: 1 as never });
    await play.says('yes');
    expect(play.maker.facts.mishaps).toEqual([]);
    expect(untimed(play).at(-1)).toBe(
      'Guide: That changes what is known to be in the wine. Confirm it with a pad or a key.',
    );
    play.presses('yes');
    await play.hearsOut();
    expect(play.maker.facts.mishaps).toMatchObject([{ mishap: 'topped up unasked' }]);
  });
});

describe('the ears', () => {
  test('are turned off by a word', async () => {
    const play = await listening('clean', 'rinse gear 1');
    await play.says('stop listening');
    expect(untimed(play)).toEqual([
      'Maker: stop listening now',
      'Guide: I have stopped listening. The pads and keys go on.',
      'Ears: off',
    ]);
  });

  test('are not spoken of while they are off', async () => {
    const play = await at('clean', 'rinse gear 1');
    await play.says('stop listening');
    expect(untimed(play).at(-1)).toBe('♪: not heard');
  });
});
