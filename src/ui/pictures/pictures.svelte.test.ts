import { describe, expect, test } from 'vitest';
import { builtInSheets } from '../../procedure/kits';
import { before, benchOf, fruitWine } from '../../../tests/story/bench.svelte';
import { Maker } from '../../../tests/story/maker';

const kit = (id: string) => new Maker(builtInSheets.find((sheet) => sheet.id === id)!);
/** What is drawn for an act some days after it was come to. */
async function pictureOf(act: string, { maker, days = 0 }: { maker?: Maker; days?: number } = {}) {
  const { queryByRole, heed, later, container } = benchOf(before(act, maker));
  if (days > 0) later(days * 86_400);
  if (queryByRole('button', { name: /^ready to continue/ })) await heed();
  return container.querySelector('.picture > svg')!;
}
const drawnFor = async (...asked: Parameters<typeof pictureOf>) =>
  (await pictureOf(...asked)).getAttribute('aria-label');

describe('the picture of an act says what can be seen', () => {
  test.each([
    ['pour juice 1', /^The fermenting bucket, filled to 4 litres of water$/],
    [
      'fill to mark 1',
      /^The fermenting bucket, filled to 23 litres, cloudy\. A dashed line marks 23 litres$/,
    ],
    [
      'read start 1',
      /^A hydrometer in its jar, drawn at 1\.0\d+, in the middle of the range\. Marked beside the stem: the sheet: 1\.0/,
    ],
    [
      'take must temperature 1',
      /^A thermometer standing in the wine, drawn at \d+ °C\. Marked beside it: \d+ °C to \d+ °C$/,
    ],
    ['take wine temperature 1', /Marked beside it: \d+ °C or warmer$/],
    ['close with airlock 1', /^Three airlocks\. Half full of water is right/],
    ['look for life 1', /^The fermenting bucket/],
    ['knock the surface 1', /^A spoon has knocked the surface of two wines/],
    ['siphon off 2', /litres siphoned from the upper vessel into the lower: .* have crossed/],
    ['draw reserve 1', /^Wine on its way from the vessel into a jug: 2 litres of reserve$/],
    ['return reserve 1', /^Wine on its way from the jug back into the vessel: 2 litres of reserve$/],
    ['measure gap 1', /^The neck of the vessel: the wine stands at most \d+ millimetres below the stopper$/],
    ['leave to clear 1', /^The glass vessel, filled to .*, hazy\. Stopper and airlock are on$/],
    ['count bottles 1', /^Empty bottles on a shelf: \d+ bottles$/],
  ])('%s', async (act, words) => expect(await drawnFor(act)).toMatch(words));
});

test('a hydrometer that is checked floats in water at 1.000', async () =>
  expect(await drawnFor('check hydrometer 1')).toMatch(
    /^A hydrometer in its jar, in plain water, at 1\.000/,
  ));

test('on the way it floats where it was last read, with the limit marked and which way is later', async () =>
  expect(await drawnFor('read towards dry 1', { days: 14 })).toMatch(
    /as it was last read\. Marked beside the stem: finished: 0\.99\d or lower\. Day by day it sinks deeper: lower is later/,
  ));

test('while a reading is waited for, the wine is drawn in its vessel', async () =>
  expect(await drawnFor('read towards dry 1')).toMatch(/^The fermenting bucket, filled to .* sediment/));

test('the bottles have the number that was filled', async () => {
  const maker = before('lay down 1');
  expect(await drawnFor('lay down 1', { maker })).toBe(
    `Bottles laid down, the wine against their closures: ${maker.facts.filled!} bottles`,
  );
});

test('a gap that was too wide is drawn beside the most it may be', async () => {
  const { type, press, container, getByRole } = benchOf(before('measure gap 1'));
  await type('From the wine up to the stopper', '80');
  await press('read it back');
  await press('yes it is');
  expect(getByRole('heading', { level: 1 })).toHaveTextContent('Fill the vessel');
  expect(container.querySelector('.picture > svg')?.getAttribute('aria-label')).toMatch(
    /^The neck of the vessel: the wine stands 80 millimetres below the stopper\. A dashed line marks \d+ millimetres/,
  );
});

test('the torch shows milky and clear side by side', async () => {
  const picture = await pictureOf('look through the wine 1.1', { maker: kit('chalk-meadow'), days: 40 });
  expect(picture.getAttribute('aria-label')).toMatch(/In the milky one its beam stands in the wine/);
  expect([...picture.querySelectorAll('text')].map(({ textContent }) => textContent)).toEqual([
    'milky',
    'clear',
  ]);
});

test('the gas gate shows how a lively jar differs from a quiet one', () => {
  const { getByRole } = benchOf(new Maker(fruitWine).goTo('proving gas-free'));
  expect(getByRole('img', { name: /^Two shaken jars/ })).toHaveTextContent('livelierlike water');
});

test('foam is shown beside a bare surface on the day it is looked for', async () =>
  expect((await pictureOf('look for life 1', { days: 2 })).textContent).toBe('foam or a ringnothing yet'));

describe('the spoon of a stir', () => {
  const spoon = (container: HTMLElement) => container.querySelector('.movement svg');
  const angle = (container: HTMLElement) =>
    container.querySelector<HTMLElement>('.spoon')?.style.getPropertyValue('--turn');

  test('goes the other way round from the sheet’s reversal on, and stands while the clock is held', async () => {
    const { press, heed, later, container } = benchOf(before('stir out gas 1'));
    await heed();
    expect(spoon(container)).toBeNull();
    await press('start the clock');
    later(fruitWine.degas.reverseSeconds - 2);
    expect(spoon(container)?.getAttribute('aria-label')).toMatch(/clockwise$/);
    const forth = angle(container);
    later(4);
    expect(spoon(container)?.getAttribute('aria-label')).toMatch(/anticlockwise$/);
    expect(angle(container)).toBe(forth);
    await press('wait a moment');
    later(10);
    expect(angle(container)).toBe(forth);
  });
});
