import { en } from '../../src/text/en';
import { BenchPage } from './bench';
import { broughtIn, makerOf } from './brought-in';
import { expect, test } from './fixtures';
import { LedByHand } from './led-by-hand';
import { Tree } from './tree';

test.use({ timezoneId: 'UTC' });

/** A maker who hears each screen read out before it is answered. */
class ReadOut extends BenchPage {
  readonly heard: string[] = [];

  override async press(pad: string | RegExp): Promise<void> {
    await this.hear();
    await super.press(pad);
  }

  async hear(): Promise<void> {
    await expect(this.heading).toBeVisible();
    const title = await this.heading.innerText();
    this.heard.push(title);
    await expect
      .poll(async () => (await Tree.of(this.page)).faults(en.bench.pressLabel), { message: title })
      .toEqual([]);
  }
}

test('every screen of the stabilising visit can be followed by the accessibility tree alone', async ({
  page,
}) => {
  test.setTimeout(120_000);
  const maker = makerOf('hedge-lantern').goTo('stabilise');
  await broughtIn(page, maker);
  const bench = new ReadOut(page);
  await new LedByHand(page, maker, undefined, bench).toTheEnd('top up');
  await bench.hear();
  // Acts, warnings, what is asked back, and the gate, shut and open.
  expect(bench.heard).toEqual(
    expect.arrayContaining([
      expect.stringContaining('Draw off'),
      expect.stringContaining('Right?'),
      expect.stringContaining('Not yet.'),
      expect.stringContaining('The gas is out'),
    ]),
  );
  expect(bench.heard.length).toBeGreaterThan(25);
});
