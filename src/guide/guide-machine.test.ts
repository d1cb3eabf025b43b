import { describe, expect, test } from 'vitest';
import { Maker } from '../../tests/story/maker';
import { Play } from '../../tests/story/play';
import type { Gravity } from '../domain/gravity';
import type { Celsius } from '../domain/unit';
import type { KitSheet } from '../procedure/kit-sheet';
import { builtInSheets } from '../procedure/kits';
import type { Place } from '../procedure/phase';

const [hedge] = builtInSheets.filter(({ id }) => id === 'hedge-lantern') as [KitSheet];

function makerAt(place: Place, act?: string): Maker {
  const maker = new Maker(hedge).goTowards(place);
  while (act !== undefined && maker.act?.id !== act) maker.answer();
  return maker;
}

/** The guide opens where a careful maker has come to; what it says on opening is left out. */
async function at(place: Place, act?: string): Promise<Play> {
  const play = Play.with(makerAt(place, act));
  await play.hearsOut();
  play.script.length = 0;
  return play;
}

const untimed = ({ script }: Play): string[] => script.map((line) => line.replace(/^\d+:\d\d /, ''));

describe('a sachet', () => {
  const sorbate = '“Potassium sorbate, stabiliser”';

  test('is warned of, taken up by its name, and counts only when it is read back and answered with yes', async () => {
    const play = await at('stabilise', 'add sachet sorbate');
    await play.says('ready');
    await play.says('done');
    await play.says('no');
    await play.says('done');
    await play.says('yes');
    await play.waits(0);
    expect(untimed(play).filter((line) => !line.startsWith('Guide: Dissolve'))).toEqual([
      'Maker: ready to continue',
      'Maker: that is done',
      `Guide: Both sachets of ${sorbate} are in. Right? ♪`,
      'Maker: no it is not',
      'Guide: Then it does not count.',
      'Maker: that is done',
      `Guide: Both sachets of ${sorbate} are in. Right? ♪`,
      'Maker: yes it is',
      'Batch: act done, add sachet sorbate',
      'Guide: Stir it in well, without splashing, for 2 minutes. I keep the time.',
    ]);
  });

  test('is not passed by a "done" or "yes" that comes before the warning is heeded', async () => {
    const play = await at('stabilise', 'add sachet sorbate');
    for (const command of ['done', 'yes', 'go on', 'start', 'finish'] as const) await play.interrupts(command);
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
    await play.types({ type: 'temperature taken', how: 'touch', act: 'take must temperature 1', celsius: 21.5 as Celsius });
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
      ['Guide: You were stirring.', '♪: time up', 'Guide: Time was up 4 minutes ago.', 'Guide: Say: that is done. Or: one more minute.'],
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
