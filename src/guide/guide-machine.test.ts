import { describe, expect, test } from 'vitest';
import { Play } from '../../tests/story/play';
import { at, makerAt, untimed } from '../../tests/story/scene';
import type { Gravity } from '../domain/gravity';
import type { Celsius } from '../domain/unit';

describe('a sachet', () => {
  const sorbate = '“Potassium sorbate, stabiliser”';

  test('is warned of, taken up by its name, and counts only when it is read back and answered with yes', async () => {
    const play = await at('stabilise', 'add sachet sorbate');
    await play.says('ready');
    await play.says('done');
    await play.says('no');
    await play.says('done');
    await play.says('yes');
    const said = untimed(play).filter((line) => !line.startsWith('Guide: Dissolve'));
    expect(said.slice(0, said.indexOf('Batch: act done, add sachet sorbate') + 1)).toEqual([
      'Maker: ready to continue',
      'Maker: that is done',
      `Guide: Both sachets of ${sorbate} are in. Right? ♪`,
      'Maker: no it is not',
      'Guide: Then it does not count.',
      'Maker: that is done',
      `Guide: Both sachets of ${sorbate} are in. Right? ♪`,
      'Maker: yes it is',
      'Batch: act done, add sachet sorbate',
    ]);
  });

  test('is not passed by a "done" or "yes" that comes before the warning is heeded', async () => {
    const play = await at('stabilise', 'add sachet sorbate');
    for (const command of ['done', 'yes', 'go on', 'start', 'finish'] as const)
      await play.interrupts(command);
    expect(untimed(play)).toEqual([
      ...['that is done', 'yes it is', 'go on now', 'start the clock', 'finish stirring'].flatMap((said) => [
        `Maker: ${said}`,
        '♪: not heard',
      ]),
    ]);
  });

  test('cannot be heeded while its warning is still being said, and is warned of again after an interruption', async () => {
    const play = Play.with(makerAt('stabilise', 'add sachet sorbate'));
    await play.waits(3);
    await play.interrupts('ready');
    await play.interrupts('where are we');
    await play.hearsOut();
    const script = untimed(play);
    expect(script.slice(script.indexOf('Maker: ready to continue'))).toEqual([
      'Maker: ready to continue',
      '♪: not heard',
      'Maker: where was I',
      // What was still to be said is captioned, not lost.
      'Guide: What is in the wine stays in it.',
      `Guide: Take up both sachets of ${sorbate}, and read the name on each.`,
      'Guide: Say: ready to continue.',
      'Guide: Stabilise, act 5 of 6.',
      'Guide: Done: Take the stabilisers in hand, Add a sachet: “Metabisulphite” and Stir it in.',
      `Guide: Not done: Add both sachets of ${sorbate}.`,
      `Guide: In your hand: both sachets of ${sorbate}. It is not in yet.`,
      '♪: warn',
      'Guide: Powder in gassy wine can erupt like a fountain. Stand back, add it a little at a time, and have a cloth ready.',
      'Guide: What is in the wine stays in it.',
      `Guide: Take up both sachets of ${sorbate}, and read the name on each.`,
      'Guide: Say: ready to continue. ♪',
    ]);
  });
});

describe('silence', () => {
  test('is no: what is read back is said once more after eight seconds, and then waits', async () => {
    const play = await at('pitch');
    await play.types({
      type: 'temperature taken',
      how: 'touch',
      act: 'take must temperature 1',
      celsius: 21.5 as Celsius,
    });
    await play.waits(60);
    expect({ script: untimed(play), stage: play.context.stage }).toEqual({
      script: [
        'Maker: (types: temperature taken)',
        'Guide: 21.5 degrees Celsius. Right? ♪',
        'Guide: 21.5 degrees Celsius. Right?',
      ],
      stage: 'reading back',
    });
  });
});

describe('a reading', () => {
  test('is read back digit by digit; clean hands are asked for when wine is next', async () => {
    const play = await at('mix', 'read start 1');
    await play.types({
      type: 'reading taken',
      how: 'touch',
      act: 'read start 1',
      reading: 10_540 as Gravity,
      sampleCelsius: 20 as Celsius,
      wineCelsius: 21 as Celsius,
      degassed: false,
      returned: false,
    });
    await play.says('yes');
    await play.waits(0);
    expect(untimed(play).slice(0, 4)).toEqual([
      'Maker: (types: reading taken)',
      'Guide: One point zero five four. The sample at 20 degrees Celsius, the wine at 21 degrees Celsius. With gas in the sample, so it will not count. Right? ♪',
      'Maker: yes it is',
      'Batch: reading taken, read start 1',
    ]);
  });
});

describe('looking back', () => {
  test('shows what is done and changes nothing; "done" is not heard meanwhile', async () => {
    const play = await at('pitch', 'close with airlock 1');
    await play.says('back');
    await play.says('back');
    await play.says('done');
    await play.says('go on');
    await play.hearsOut();
    expect(untimed(play).slice(0, 7)).toEqual([
      'Maker: one step back',
      'Guide: Before this: Add a sachet: “Wine yeast”. It is done, and stays done.',
      'Maker: one step back',
      'Guide: Before this: Take the temperature of the juice. It is done, and stays done.',
      'Maker: that is done',
      '♪: not heard',
      'Maker: go on now',
    ]);
  });
});

describe('something went wrong', () => {
  test('stops everything and opens the card for it', async () => {
    const play = await at('mix', 'pour juice 1');
    await play.says('something went wrong');
    await play.hearsOut();
    expect(untimed(play)).toEqual([
      'Maker: something went wrong',
      'Screen: mishap',
      'Guide: Stop, and put down what you hold. Nothing that you recorded is lost. Choose on the screen what happened.',
      'Guide: I am waiting.',
      'Guide: Say: go on now.',
    ]);
  });
});
