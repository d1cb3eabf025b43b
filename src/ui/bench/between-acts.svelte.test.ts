import { describe, expect, test, vi } from 'vitest';
import { before, benchOf } from '../../../tests/story/bench.svelte';
import { silentHands } from '../../../tests/story/silent-hands.svelte';
import { FIRST_PREFERENCES } from '../../domain/preferences';
import type { Problem } from '../../domain/problem';
import { situationOf } from '../../guide/situation-of';
import { en } from '../../text/en';
import { formatsFor } from '../../text/formats';
import { guideOffers } from './guide-offers';

const words = {
  text: en,
  formats: formatsFor({ preferences: FIRST_PREFERENCES, language: 'en' }),
  whole: () => en,
};

/** A guide at an act that is answered by a word, and a disk that takes its time. */
function atAnAct() {
  const maker = before('rinse gear 1');
  let written: (problem?: Problem) => void = () => undefined;
  const report = vi.fn(() => new Promise<Problem | undefined>((resolve) => (written = resolve)));
  const hands = silentHands(words, () => maker.now.at, report);
  hands.tell(situationOf(maker.snapshot, maker.now, words));
  const pads = () => guideOffers(hands, en, () => undefined);
  const isDead = () => pads().every(({ disabled }) => disabled);
  return { maker, hands, report, isDead, written: (problem?: Problem) => written(problem) };
}

describe('while an answer is on its way to the disk', () => {
  test('the pads stay as they are, and go dead only if it takes long', () => {
    const { hands, report, isDead } = atAnAct();
    hands.hear('done', 'key');
    expect(report).toHaveBeenCalledTimes(1);
    expect(isDead()).toBe(false);
    hands.wait();
    expect(isDead()).toBe(true);
  });

  test('nothing more is taken', () => {
    const { hands, report } = atAnAct();
    hands.hear('done', 'key');
    hands.hear('done', 'key');
    hands.hear('wait', 'key');
    expect(report).toHaveBeenCalledTimes(1);
    expect(hands.context.stage).toBe('acting');
  });

  test('one that is refused wakes them again', async () => {
    const { hands, isDead, written } = atAnAct();
    hands.hear('done', 'key');
    hands.wait();
    written({ code: 'storage-full' });
    await vi.waitFor(() => expect(isDead()).toBe(false));
    expect(hands.refused).toEqual({ code: 'storage-full' });
  });
});

describe('from one act to the next', () => {
  test('the pads stay where they are, and the words are new', async () => {
    const { pad, press, heed, heading, container } = benchOf(before('wash gear 1'));
    await heed();
    const [done, words, title] = [pad('that is done'), container.querySelector('.act'), heading()];
    await press('that is done');
    expect(heading()).not.toBe(title);
    expect(pad('that is done')).toBe(done);
    expect(container.querySelector('.act')).not.toBe(words);
  });

  test('what a warning covers is drawn once the warning stands, and is there when it is heeded', async () => {
    const { heading, heed, container } = benchOf(before('pour juice 1'));
    const titles = () => [...container.querySelectorAll('h1')].map(({ textContent }) => textContent);
    expect(titles()).toEqual([heading()]);
    await vi.waitFor(() => expect(titles()).toContain('Pour the juice into the vessel.'));
    await heed();
    expect(heading()).toBe('Pour the juice into the vessel.');
  });
});
