import { describe, expect, test } from 'vitest';
import { before, benchOf, fruitWine } from '../../../tests/story/bench.svelte';
import { Maker } from '../../../tests/story/maker';
import type { Gravity } from '../../domain/gravity';
import { en } from '../../text/en';

const { wrappers } = en;
const { lookedAgain, mishaps } = en.whatHappened;
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

  test.each([
    ['one too many', 'Metabisulphite', wrappers.tooMany.which, 'wrapper too many', 'sulphite'],
    ['one too few', 'Bentonite, first in', wrappers.tooFew.which, 'sachet still full', 'bentonite'],
  ] as const)(
    '%s leads to its mishap by one pad, the sachet chosen',
    async (_, printed, pad, mishap, sachet) => {
      const { press, reports, heading, getByRole, getByText } = afterTheYeast();
      await press(wrappers.differ);
      await press(pad(printed));
      expect(reports).toEqual([]);
      expect(heading()).toBe(mishaps[mishap].title);
      expect(getByRole('radio', { name: printed })).toBeChecked();
      await press('tell it');
      await press(/^yes it is/);
      expect(reports).toEqual([{ type: 'mishap told', how: 'touch', mishap, sachet }]);
      expect(getByText(en.whatHappened.told)).toBeInTheDocument();
    },
  );

  test('after one too many was told, its wrapper is one of those that should lie there', async () => {
    const { press, getByText } = afterTheYeast();
    await press(wrappers.differ);
    await press(wrappers.tooMany.which('Metabisulphite'));
    await press('tell it');
    await press(/^yes it is/);
    await press('go on now');
    expect(getByText(/3 empty wrappers should lie there: .*“Metabisulphite”/)).toBeInTheDocument();
  });

  test('only what can have happened here is offered', async () => {
    const { press, queryByRole } = afterTheYeast();
    await press(wrappers.differ);
    expect(queryByRole('button', { name: wrappers.tooMany.which('Wine yeast') })).not.toBeInTheDocument();
    expect(queryByRole('button', { name: wrappers.tooFew.which('Metabisulphite') })).not.toBeInTheDocument();
  });

  test('“not this” comes back to where they are asked for', async () => {
    const { press, pad } = afterTheYeast();
    await press(wrappers.differ);
    await press(wrappers.tooFew.which('Wine yeast'));
    await press('not this');
    expect(pad(wrappers.agree)).toBeInTheDocument();
  });

  test('are asked for before a gate that ends the visit, and not before one that is passed on the day', () => {
    const shut = new Maker(fruitWine).goTo('proving dry');
    shut.wait(1).read({ reading: 10_100 as Gravity });
    const { getByText, unmount } = benchOf(shut);
    expect(getByText(wrappers.title)).toBeInTheDocument();
    unmount();
    const thin = before('read start 1');
    thin.read({ act: 'read start 1', reading: 10_100 as Gravity });
    expect(thin.place).toBe('proving mixed');
    for (const maker of [thin, new Maker(fruitWine).goTo('proving dry')]) {
      const page = benchOf(maker);
      expect(page.queryByText(wrappers.title)).not.toBeInTheDocument();
      page.unmount();
    }
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
    page.later(20 * HOUR);
    expect(page.queryByText(lookedAgain.about(mishaps['too cold'].title))).not.toBeInTheDocument();
    page.later(100 * HOUR);
    expect(page.getByText(mishaps['too cold'].look)).toBeInTheDocument();
    await page.press(lookedAgain.well);
    expect(page.reports).toEqual([
      { type: 'looked again', how: 'touch', entry: expect.any(Number) as number, well: true },
    ]);
    expect(page.queryByText(lookedAgain.about(mishaps['too cold'].title))).not.toBeInTheDocument();
  });
});

test('another look does not come over a clock that runs, nor over time that is up', async () => {
  const maker = before('stir in sorbate');
  maker.report({ type: 'mishap told', how: 'touch', mishap: 'stuck bung' });
  maker.wait(2);
  const lookAgain = lookedAgain.about(mishaps['stuck bung'].title);
  const page = benchOf(maker);
  expect(page.getByText(lookAgain)).toBeInTheDocument();
  expect(page.getByText(lookAgain).closest('details')?.open).toBe(false);
  await page.press(/^start the clock/);
  expect(page.queryByText(lookAgain)).not.toBeInTheDocument();
  await page.press(/^wait a moment/);
  expect(page.queryByText(lookAgain)).not.toBeInTheDocument();
  await page.press(/^go on now/);
  page.later(HOUR);
  expect(page.queryByText(lookAgain)).not.toBeInTheDocument();
  await page.press(/^that is done/);
  expect(page.getByText(lookAgain)).toBeInTheDocument();
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
