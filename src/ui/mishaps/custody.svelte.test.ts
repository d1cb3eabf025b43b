import { describe, expect, test } from 'vitest';
import { before, benchOf } from '../../../tests/story/bench.svelte';
import { en } from '../../text/en';

const { lookedAgain, mishaps, wrappers } = en.whatHappened;
const HOUR = 3600;

/** The visit of the first day is over: bentonite and yeast are in. */
const afterTheYeast = () => benchOf(before('look for life 1'));

describe('the empty wrappers of a visit', () => {
  test('are named, and one tap says that they are all there', async () => {
    const { press, reports, getByText, queryByText } = afterTheYeast();
    expect(
      getByText(/2 empty wrappers should lie there: “Bentonite, first in” and “Wine yeast”/),
    ).toBeInTheDocument();
    await press(wrappers.agree);
    expect(reports).toEqual([{ type: 'wrappers counted', how: 'touch', empty: ['bentonite', 'yeast'] }]);
    expect(queryByText(wrappers.title)).not.toBeInTheDocument();
  });

  test('one too many leads to what happened', async () => {
    const { press, user, reports, heading, getByRole } = afterTheYeast();
    await press(wrappers.differ);
    await user.click(getByRole('checkbox', { name: 'Metabisulphite' }));
    await press(wrappers.tell);
    expect(reports).toEqual([]);
    expect(heading()).toBe(en.hands.mishap.title);
  });
});

describe('a mishap that wants another look', () => {
  const spilled = () => {
    const maker = before('look for life 1');
    maker.report({ type: 'mishap told', how: 'touch', mishap: 'too cold' });
    return benchOf(maker);
  };

  test('is announced with its day', () =>
    expect(
      spilled().getByText(new RegExp(`^Look again on .*: ${mishaps['too cold'].title}`)),
    ).toBeInTheDocument());

  test('asks on its day, until all is well', async () => {
    const page = spilled();
    page.later(100 * HOUR);
    await page.press(lookedAgain.well);
    expect(page.reports).toEqual([
      { type: 'looked again', how: 'touch', entry: expect.any(Number) as number, well: true },
    ]);
    expect(page.queryByText(lookedAgain.title)).not.toBeInTheDocument();
  });
});

describe('asking for help', () => {
  const asked = async () => {
    const page = afterTheYeast();
    await page.press(/^something went wrong/);
    await page.press(en.digest.title);
    return page;
  };

  test('shows the facts of the batch, and copies them', async () => {
    const page = await asked();
    const { value } = page.getByLabelText(en.digest.says) as HTMLTextAreaElement;
    expect(value).toMatch(/^Hedge Lantern, edition 3/);
    await page.press(en.digest.copy);
    expect(page.oncopy).toHaveBeenCalledWith(value);
    expect(page.getByText(en.digest.copied)).toBeInTheDocument();
  });

  test('selects them where the device does not copy', async () => {
    const page = await asked();
    page.oncopy.mockResolvedValue(false);
    await page.press(en.digest.copy);
    expect(page.getByText(en.digest.selected)).toBeInTheDocument();
  });
});

test('someone who was interrupted is told what is done, and what comes now', async () => {
  const page = benchOf(before('stir in sorbate'));
  await page.press(/^something went wrong/);
  await page.press(en.hands.mishap.interrupted);
  expect(page.captions().join(' ')).toMatch(/Done|done/);
});
