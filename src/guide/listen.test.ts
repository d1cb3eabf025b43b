import { describe, expect, test } from 'vitest';
import { at, untimed } from '../../tests/story/scene';
import { FakeEars } from '../../tests/story/fake-ears';
import type { Play } from '../../tests/story/play';

/** A guide with ears that hear what they are told. */
async function listening(...where: Parameters<typeof at>): Promise<{ play: Play; ears: FakeEars }> {
  const ears = new FakeEars();
  const play = await at(...where);
  play.lends(ears);
  ears.becomes('listening');
  await play.hearsOut();
  play.script.length = 0;
  return { play, ears };
}

describe('a guide with ears', () => {
  test('lets them hear only what is on offer where it stands', async () => {
    const { play, ears } = await listening('clean', 'rinse gear 1');
    expect(ears.grammar).toContain('that is done');
    expect(ears.grammar).not.toContain('finish stirring');
    await play.says('wait');
    await play.hearsOut();
    expect(ears.grammar).not.toContain('that is done');
    expect(ears.grammar).toContain('go on now');
  });

  test('takes what was surely heard', async () => {
    const { play, ears } = await listening('clean', 'rinse gear 1');
    ears.hear('that is done');
    await play.hearsOut();
    expect(untimed(play)).toContain('Batch: act done, rinse gear 1');
  });

  test('asks about what was not', async () => {
    const { play, ears } = await listening('clean', 'rinse gear 1');
    ears.hear('that is done', 'barely');
    await play.hearsOut();
    expect(untimed(play)).toEqual(['Guide: Did you say: that is done?']);
  });

  test('takes the same phrase twice for one', async () => {
    const { play, ears } = await listening('clean', 'rinse gear 1');
    ears.hear('why is that');
    await play.waits(1);
    const said = untimed(play).length;
    ears.hear('why is that');
    await play.waits(0.25);
    expect(untimed(play).length).toBe(said);
  });

  test('hears a number where one is asked, and nowhere else', async () => {
    const { play, ears } = await listening('pitch', 'take must temperature 1');
    ears.hear('twenty one and a half');
    await play.hearsOut();
    expect(untimed(play)).toEqual([]);
    ears.hear('write this down');
    await play.hearsOut();
    ears.hear('twenty one and a half');
    await play.hearsOut();
    expect(untimed(play).at(-1)).toBe('Guide: 21.5 degrees Celsius. Right? ♪');
  });

  test('says once that it does not catch what is said, and points to the pads', async () => {
    const { play, ears } = await listening('clean', 'rinse gear 1');
    for (let nth = 0; nth < 10; nth++) {
      ears.hear('that is done', 'not');
      await play.waits(3);
    }
    const caught = untimed(play).filter((line) => line.includes('do not catch'));
    expect(caught).toHaveLength(1);
  });

  test('says once that it is too loud, and points to the pads', async () => {
    const { play, ears } = await listening('clean', 'rinse gear 1');
    for (let nth = 0; nth < 60; nth++) {
      ears.inRoom({ unreliable: true });
      await play.waits(0.25);
    }
    expect(untimed(play).filter((line) => line.includes('too loud'))).toHaveLength(1);
  });

  test('goes on by pads when the ears fail, and offers no number by voice', async () => {
    const { play, ears } = await listening('pitch', 'take must temperature 1');
    ears.becomes('failed');
    await play.says('write down');
    expect(untimed(play).at(-1)).toBe('♪: not heard');
  });

  test('gives them back when it is put away', async () => {
    const { play, ears } = await listening('clean', 'rinse gear 1');
    play.close();
    ears.hear('that is done');
    await play.waits(1);
    expect(untimed(play)).toEqual([]);
  });
});
