import { flushSync } from 'svelte';
import { describe, expect, test } from 'vitest';
import { benchOf, fruitWine } from '../../../tests/story/bench.svelte';
import { Maker } from '../../../tests/story/maker';
import { asGravity } from '../../domain/gravity';
import { judge } from '../../procedure/judge';
import { en } from '../../text/en';
import { Later } from '../later.svelte';
import { laterParts } from './later-parts';

const { notHere, pressLabel } = en.bench;

/** The rest of the bench, on a network that lets nothing through until it is told to. */
function overTheNetwork() {
  let settle: { come: () => void; fail: () => void } = { come: () => undefined, fail: () => undefined };
  let asked = 0;
  const rest = new Later(() => {
    asked += 1;
    return new Promise<{ parts: typeof laterParts; text: typeof en }>((resolve, reject) => {
      settle = {
        come: () => resolve({ parts: laterParts, text: en }),
        fail: () => reject(new Error('no network')),
      };
    });
  });
  const settled = async (how: 'come' | 'fail') => {
    settle[how]();
    await rest.bring().catch(() => undefined);
    flushSync();
  };
  return { rest, asked: () => asked, comes: () => settled('come'), fails: () => settled('fail') };
}

/** A maker at the second act: the first was answered while nothing else had come. */
async function pastTheFirstAct() {
  const network = overTheNetwork();
  const page = benchOf(new Maker(fruitWine), {}, network.rest);
  for (const sachet of page.getAllByRole('checkbox')) await page.user.click(sachet);
  await page.press(/^that is done/);
  await page.press(/^yes it is/);
  return { page, ...network };
}

describe('before the rest of the bench has come', () => {
  test('the first act is shown, answered and kept', async () => {
    const { page } = await pastTheFirstAct();
    expect(page.reports).toMatchObject([{ type: 'sachets accounted', missing: [] }]);
  });

  test('the next act says that it is on its way, asks for it, and opens by itself', async () => {
    const { page, asked, comes } = await pastTheFirstAct();
    expect(page.heading()).toBe(notHere.onItsWay);
    expect(asked()).toBe(1);
    await comes();
    expect(page.heading()).toMatch(/hydrometer/);
  });

  test('where it does not come that is said, with what to do, and trying again opens the act', async () => {
    const { page, asked, fails, comes } = await pastTheFirstAct();
    await fails();
    expect(page.heading()).toBe(notHere.title);
    expect(page.getAllByText(notHere.notFetched)[0]).toBeVisible();
    await page.user.keyboard(' ');
    expect(asked()).toBe(2);
    await comes();
    expect(page.heading()).toMatch(/hydrometer/);
  });

  test('a page of the maker’s own choosing can be left again', async () => {
    const network = overTheNetwork();
    const page = benchOf(new Maker(fruitWine), {}, network.rest);
    await page.press(en.bench.otherWays.join);
    await network.fails();
    expect(page.heading()).toBe(notHere.title);
    await page.press(new RegExp(`^${en.bench.pads.back}`));
    expect(page.getAllByRole('checkbox')).not.toEqual([]);
  });

  test('what went wrong is not told, and the guide goes on', async () => {
    const network = overTheNetwork();
    const page = benchOf(new Maker(fruitWine), {}, network.rest);
    await page.press(/^something went wrong/);
    await network.fails();
    expect(page.heading()).toBe(notHere.title);
    await page.press(/^go on/);
    expect(page.getAllByRole('checkbox')).not.toEqual([]);
  });

  test.each([
    ['open', 0.994],
    ['shut', 1.01],
  ])('a gate that is %s has no pad and no key that passes it', async (how, shows) => {
    const maker = new Maker(fruitWine).goTo('proving dry');
    maker.wait(1).read({ reading: asGravity(shows) });
    expect(judge('proving dry', maker.sheet, maker.facts).open).toBe(how === 'open');
    const network = overTheNetwork();
    const page = benchOf(maker, {}, network.rest);
    await network.fails();
    const pads = page.getByRole('group', { name: pressLabel });
    expect(pads).toHaveTextContent(notHere.again);
    expect(pads).not.toHaveTextContent(en.guide.commands['go on'][0] ?? '');
    await page.user.keyboard(' {Enter}123456789');
    expect(page.reports).toEqual([]);
    expect(maker.place).toBe('proving dry');
  });
});
