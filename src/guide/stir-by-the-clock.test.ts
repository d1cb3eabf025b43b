import { describe, expect, test } from 'vitest';
import type { Play } from '../../tests/story/play';
import { at, untimed } from '../../tests/story/scene';

describe('a stir', () => {
  const stirring = async (): Promise<Play> => {
    const play = await at('degas');
    await play.says('ready');
    await play.says('start');
    await play.hearsOut();
    play.script.length = 0;
    return play;
  };

  test('is called: each turn, half way, the last ten seconds, and time up until it is answered', async () => {
    const play = await stirring();
    await play.waits(330);
    await play.says('done');
    expect(untimed(play).slice(0, 22)).toEqual([
      ...Array.from({ length: 5 }, () => 'Guide: Now the other way.'),
      'Guide: Half way. 2 minutes and 30 seconds left.',
      ...Array.from({ length: 4 }, () => 'Guide: Now the other way.'),
      'Guide: Ten seconds.',
      '♪: time up',
      'Guide: Time is up.',
      'Guide: Say: that is done. Or: one more minute.',
      '♪: time up',
      'Guide: Time was up 11 seconds ago.',
      'Guide: Say: that is done. Or: one more minute.',
      '♪: time up',
      'Guide: Time was up 22 seconds ago.',
      'Guide: Say: that is done. Or: one more minute.',
      'Maker: that is done',
      'Batch: act done, stir out gas 1',
    ]);
  });

  test('waits when it is told to, goes on with what was left, and gets one more minute', async () => {
    const play = await stirring();
    await play.waits(20);
    await play.says('wait');
    await play.waits(600);
    await play.says('go on');
    await play.says('one more minute');
    await play.hearsOut();
    expect(untimed(play)).toEqual([
      'Maker: wait a moment',
      'Batch: clock paused, stir out gas 1',
      'Guide: The clock stands, with 4 minutes and 37 seconds left.',
      'Guide: Say: go on now.',
      'Maker: go on now',
      'Batch: clock resumed, stir out gas 1',
      'Guide: 4 minutes and 37 seconds left.',
      'Maker: one more minute',
      'Batch: clock extended, stir out gas 1',
      'Guide: 5 minutes and 34 seconds left.',
    ]);
  });

  test('ends early only when that is read back', async () => {
    const play = await stirring();
    await play.waits(57);
    await play.says('finish');
    await play.says('yes');
    expect(untimed(play).slice(2, 6)).toEqual([
      'Maker: finish stirring',
      'Guide: There are 4 minutes left. You stop here all the same. Right? ♪',
      'Maker: yes it is',
      'Batch: act done, stir out gas 1',
    ]);
  });

  test.each([
    [60, ['Guide: You were stirring.', 'Guide: 3 minutes and 59 seconds left.']],
    [
      538,
      [
        'Guide: You were stirring.',
        '♪: time up',
        'Guide: Time was up 4 minutes ago.',
        'Guide: Say: that is done. Or: one more minute.',
      ],
    ],
    [
      14_698,
      [
        'Guide: You were stirring.',
        '♪: time up',
        'Guide: Time was up 4 hours ago.',
        'Guide: That is long ago. Look at it before you go on.',
        'Guide: Say: that is done. Or: one more minute.',
      ],
    ],
  ])('is where it should be after a reload of %i seconds', async (seconds, expected) => {
    const play = await stirring();
    await play.reload(seconds);
    expect(untimed(play).slice(1)).toEqual(expected);
  });

  test('says what is left after the device slept, and makes no call that is past', async () => {
    const play = await stirring();
    play.clock.sleep(100_000);
    await play.waits(1);
    await play.hearsOut();
    expect(untimed(play)).toEqual(['Guide: 3 minutes and 19 seconds left.']);
  });
});
