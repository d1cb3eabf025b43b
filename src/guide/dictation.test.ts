import { describe, expect, test } from 'vitest';
import { at, untimed } from '../../tests/story/scene';
import type { Play } from '../../tests/story/play';
import { earshot } from './earshot';

/** The guide with its ears on, where a careful maker has come to. */
async function listening(...where: Parameters<typeof at>): Promise<Play> {
  const play = await at(...where);
  await play.listens();
  play.script.length = 0;
  return play;
}

const tells = async (play: Play, ...said: readonly (number | 'yes' | 'no' | 'wrong')[]) => {
  for (const each of said) await (typeof each === 'number' ? play.tells(each) : play.says(each));
};

describe('a reading that is told by voice', () => {
  test('is asked one thing after another, said back each time, and counts after the whole is read back', async () => {
    const play = await listening('mix', 'read start 1');
    await play.says('new reading');
    await tells(play, 1.054, 21, 22.5, 'yes', 'no');
    await play.says('yes');
    expect(untimed(play)).toEqual([
      'Maker: new reading',
      'Guide: What does the hydrometer read?',
      'Maker: 1.054',
      'Guide: One point zero five four.',
      'Guide: How warm is the sample, in degrees Celsius?',
      'Maker: 21',
      'Guide: 21 degrees Celsius.',
      'Guide: How warm is the wine itself, in degrees Celsius?',
      'Maker: 22.5',
      'Guide: 22.5 degrees Celsius.',
      'Guide: Was the gas stirred out of the sample?',
      'Maker: yes it is',
      'Guide: Yes.',
      'Guide: Did the sample go back into the wine, from a sanitised jar?',
      'Maker: no it is not',
      'Guide: One point zero five four. The sample at 21 degrees Celsius, the wine at 22.5 degrees Celsius. Right? ♪',
      'Maker: yes it is',
      'Batch: reading taken, read start 1',
      ...untimed(play).slice(18),
    ]);
    expect(play.maker.facts.readings.at(-1)).toMatchObject({ read: 10_540, degassed: true });
  });

  test('heard wrong, is taken back with a word and told again', async () => {
    const play = await listening('mix', 'read start 1');
    await play.says('new reading');
    await tells(play, 1.044, 'wrong', 1.054, 21, 22, 'yes', 'no', 'yes');
    expect(play.maker.facts.readings.at(-1)).toMatchObject({ read: 10_540 });
  });

  test('denied when it is read back, counts for nothing and is asked from the beginning', async () => {
    const play = await listening('mix', 'read start 1');
    const before = play.maker.facts.readings.length;
    await play.says('new reading');
    await tells(play, 1.054, 21, 22, 'yes', 'no', 'no');
    await play.hearsOut();
    expect(untimed(play).slice(-2)).toEqual([
      'Guide: Then it does not count.',
      'Guide: What does the hydrometer read?',
    ]);
    expect(play.maker.facts.readings).toHaveLength(before);
  });

  test('stays where it was while the maker asks for a moment', async () => {
    const play = await listening('mix', 'read start 1');
    await play.says('new reading');
    await tells(play, 1.054);
    await play.says('wait');
    await play.says('go on');
    await play.hearsOut();
    expect(untimed(play).at(-1)).toBe('Guide: How warm is the sample, in degrees Celsius?');
  });

  test('gives way to what is typed meanwhile', async () => {
    const play = await listening('mix', 'read start 1');
    await play.says('new reading');
    await tells(play, 1.044);
    await play.types(play.card());
    await play.says('yes');
    expect(play.maker.facts.readings.at(-1)?.read).not.toBe(10_440);
    expect(play.context.dictation).toBeUndefined();
  });

  test('a pad for it opens the card, as ever', async () => {
    const play = await at('mix', 'read start 1');
    play.presses('new reading');
    expect(untimed(play)).toContain('Screen: reading');
  });
});

describe('what can be told where one number is asked', () => {
  test('is begun with a word, read back, and answered with yes', async () => {
    const play = await listening('pitch', 'take must temperature 1');
    await play.says('write down');
    await tells(play, 21.5, 'yes');
    expect(untimed(play)).toEqual([
      'Maker: write this down',
      'Guide: How warm is it, in degrees Celsius?',
      'Maker: 21.5',
      'Guide: 21.5 degrees Celsius. Right? ♪',
      'Maker: yes it is',
      'Batch: temperature taken, take must temperature 1',
      ...untimed(play).slice(6),
    ]);
  });

  test('is the hydrometer, its scale and all', async () => {
    const play = await listening('prepare', 'check hydrometer 1');
    await play.says('write down');
    await tells(play, 'no', 'no', 1.001, 20, 'yes');
    expect(play.maker.facts.instrument).toMatchObject({ division: 10, calibratedAt: 20, offset: 10 });
  });

  test('is a count of bottles', async () => {
    const play = await listening('bottle', 'count bottles 1');
    await play.says('ready');
    await play.says('write down');
    await tells(play, 32, 33, 'no', 'yes');
    expect(play.maker.facts.bottles).toEqual({ bottles: 32, closures: 33, threaded: false });
  });

  test('cannot be told while the ears are off', async () => {
    const play = await at('pitch', 'take must temperature 1');
    await play.says('write down');
    expect(untimed(play).at(-1)).toBe('♪: not heard');
  });
});

describe('within earshot', () => {
  test('is a number only while one is asked, and only in its range', async () => {
    const play = await listening('pitch', 'take must temperature 1');
    expect(earshot(play.context).numbers).toBeUndefined();
    await play.says('write down');
    await play.hearsOut();
    expect(earshot(play.context).numbers).toEqual({ kind: 'temperature', lowest: 10, highest: 40 });
    await tells(play, 21);
    await play.hearsOut();
    expect(earshot(play.context).numbers).toBeUndefined();
  });

  test('is exactly what is on offer, as the dictionary spells it', async () => {
    const play = await listening('mix', 'read start 1');
    const { phrases } = earshot(play.context);
    expect([
      ...new Set([...phrases.values()].map((meaning) => 'command' in meaning && meaning.command)),
    ]).toEqual([
      'new reading',
      'again',
      'back',
      'wait',
      'why',
      'where are we',
      'what can I say',
      'something went wrong',
      'stop listening',
    ]);
    expect(phrases.get('i have finished')).toBeUndefined();
  });
});
