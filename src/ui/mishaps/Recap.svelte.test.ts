import { describe, expect, test } from 'vitest';
import { before, benchOf } from '../../../tests/story/bench.svelte';
import { en } from '../../text/en';

describe('someone who was interrupted', () => {
  const interrupted = async (act: string) => {
    const page = benchOf(before(act));
    await page.press(/^something went wrong/);
    await page.press(en.hands.mishap.interrupted);
    return page;
  };

  test('sees what is not done in the largest type, what is done, and what should be in the hand', async () => {
    const { heading, getAllByText, captions } = await interrupted('add sachet sorbate');
    expect(heading()).toBe('Not done: Add both sachets of “Potassium sorbate, stabiliser”.');
    for (const line of [
      /^Done: .*“Metabisulphite”/,
      /^In your hand: .*“Potassium sorbate, stabiliser”\. It is not in yet\.$/,
    ]) {
      expect(getAllByText(line)[0]).toBeVisible();
      expect(captions().some((said) => line.test(said))).toBe(true);
    }
  });

  test('is not led to think that a stir is done', async () => {
    const { heading, getAllByText } = await interrupted('stir in sorbate');
    expect(heading()).toMatch(/^Not done: Stir/);
    expect(getAllByText('In your hand: nothing that goes in.')[0]).toBeVisible();
  });

  test('sees it until “go on”, and then the act', async () => {
    const page = await interrupted('stir in sorbate');
    page.later(120);
    expect(page.heading()).toMatch(/^Not done:/);
    await page.press(/^go on now/);
    expect(page.heading()).toMatch(/^Stir/);
    await page.press(/^something went wrong/);
    expect(page.heading()).toBe(en.hands.mishap.title);
  });

  test('in a stir sees what is left of it; “go on” takes it up', async () => {
    const page = benchOf(before('stir in sorbate'));
    await page.press(/^start the clock/);
    await page.press(/^wait a moment/);
    await page.press(/^something went wrong/);
    await page.press(en.hands.mishap.interrupted);
    expect(page.getAllByText(/\d.*left\.?$/)[0]).toBeVisible();
    await page.press(/^go on now/);
    expect(page.reports.at(-1)).toMatchObject({ type: 'clock resumed' });
    expect(page.heading()).toMatch(/^Stir/);
  });
});
