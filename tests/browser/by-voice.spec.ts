import { readFileSync } from 'node:fs';
import { broughtIn, makerOf } from './brought-in';
import { expect, test } from './fixtures';
import { keptEvents } from './kept-events';
import { loseMicrophone, makeNoise, refuseMicrophone, say, withMicrophone } from './microphone';
import { atTheShutGate } from './shut-gate';
import { spokenOn } from './spoken';
import { SPEECH, SpokenTo } from './spoken-to';

test.use({ timezoneId: 'UTC' });
test.beforeEach(({ context }) => withMicrophone(context));

const DONE = 'tests/voice/clips/that-is-done.flac';

test('a reading is told, corrected and read back by speech alone, without a network and over noise; the gate stays shut', async ({
  page,
  context,
  faults,
}) => {
  test.setTimeout(120_000);
  const bench = await atTheShutGate(page);
  const spoken = new SpokenTo(page);
  await spoken.turnOn();
  const already = (await keptEvents(page)).length;
  await context.setOffline(true);

  await spoken.saysTo('new reading', /What does the hydrometer read/);
  await spoken.saysTo('nine nine five', /How warm is the sample/);
  await spoken.saysTo('that is wrong', /What does the hydrometer read/);
  for (const [asks, phrase, meant, water] of [
    ['What does the hydrometer read?', 'nine nine eight', 'Zero point nine nine eight.', false],
    ['How warm is the sample, in degrees Celsius?', 'twenty', '20 degrees Celsius.', true],
    ['How warm is the wine itself, in degrees Celsius?', 'twenty-one', '21 degrees Celsius.', true],
    ['Was the gas stirred out of the sample?', 'yes it is', 'Yes.', false],
  ] as const) {
    await makeNoise(page, SPEECH, water ? 15 : undefined);
    await spoken.tells(asks, () => phrase, meant);
  }
  await spoken.saysTo('yes it is', /Right\?/);
  expect(await keptEvents(page)).toHaveLength(already);
  // A reading that does not fit the last one is asked about once more.
  await spoken.saysUntil('yes it is', async () => !/Right\?/.test((await bench.heading.textContent()) ?? ''));
  if ((await keptEvents(page)).length === already)
    await spoken.saysUntil('yes it is', async () => (await keptEvents(page)).length > already);
  await context.setOffline(false);
  const told = (await keptEvents(page)).filter(({ how }) => how === 'voice');
  expect(told).toMatchObject([
    { type: 'reading taken', reading: 9980, sampleCelsius: 20, wineCelsius: 21, degassed: true },
  ]);
  await expect(bench.heading).toHaveText('Not yet.');
  // The browser itself remarks on what cannot be fetched without a network: an icon, a look for a new version.
  faults.splice(
    0,
    faults.length,
    ...faults.filter((fault) => !/ERR_INTERNET_DISCONNECTED|when fetching the script/.test(fault)),
  );
});

test('a gate that is open is passed by saying so', async ({ page }) => {
  test.setTimeout(60_000);
  const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('proving dry'));
  await expect(bench.heading).toHaveText('It is finished.');
  const spoken = new SpokenTo(page);
  await spoken.turnOn();
  const passed = async () =>
    (await keptEvents(page)).filter(({ type, how }) => type === 'gate passed' && how === 'voice');
  await spoken.saysUntil('go on now', async () => (await passed()).length > 0);
  expect(await passed()).toMatchObject([{ gate: 'proving dry' }]);
});

test('a stabiliser is in only after it was read back and a second phrase said so', async ({ page }) => {
  test.setTimeout(90_000);
  const maker = makerOf('hedge-lantern').goTo('stabilise');
  while (maker.act?.kind !== 'add') maker.answer();
  const bench = await broughtIn(page, maker);
  const spoken = new SpokenTo(page);
  await spoken.turnOn();
  const already = (await keptEvents(page)).length;
  await spoken.saysUntil('ready to continue', async () => (await bench.pad(/^that is done/).count()) > 0);
  await spoken.saysTo('that is done', /Right\?/);
  // Neither silence nor the same phrase again is an answer.
  await bench.wait(2 / 60);
  await spoken.says('that is done');
  await page.waitForTimeout(2500);
  await expect(bench.heading).toContainText('Right?');
  expect(await keptEvents(page)).toHaveLength(already);
  await spoken.saysUntil('yes it is', async () => (await keptEvents(page)).length > already);
  const [added] = (await keptEvents(page)).filter((event) => event.how === 'voice');
  expect(added).toMatchObject({ type: 'act done', how: 'voice', act: maker.act.id });
});

test('ears that are turned on leave the guide where it is, and ask for the microphone once', async ({
  page,
}) => {
  test.setTimeout(60_000);
  const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('clean'));
  await expect(bench.pad(/^ready to continue/)).toBeEnabled();
  await bench.heed();
  await expect(bench.pad(/^that is done/)).toBeEnabled();
  const { length } = (await spokenOn(page)).lines;
  const spoken = new SpokenTo(page);
  await spoken.turnOn();
  await expect(bench.pad(/^that is done/)).toBeEnabled();
  expect((await spokenOn(page)).lines).toHaveLength(length);
  expect(await page.evaluate(() => globalThis.microphone.asked)).toBe(1);
});

test.describe('while the guide speaks', () => {
  test.use({ secondsALine: 3 });

  test('nothing that sounds like a phrase is taken for one', async ({ page }) => {
    test.setTimeout(90_000);
    const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('clean'));
    const spoken = new SpokenTo(page);
    await spoken.turnOn();
    const already = (await keptEvents(page)).length;
    await page.getByRole('button', { name: /^once more please/ }).click();
    await expect(spoken.ear).toContainText('ears shut');
    await say(page, DONE);
    await say(page, DONE);
    await expect(spoken.ear).toContainText('ears shut');
    await spoken.listens();
    await page.waitForTimeout(1500);
    expect(await keptEvents(page)).toHaveLength(already);
    expect((await spokenOn(page)).lines.length).toBeGreaterThan(0);
    // Heard once it is silent: the same ears, the same clip.
    if ((await bench.pad(/^ready to continue/).count()) > 0)
      await spoken.saysUntil('ready to continue', async () => (await bench.pad(/^that is done/).count()) > 0);
    await spoken.saysUntil('that is done', async () => (await keptEvents(page)).length > already);
  });
});

test.describe('ears that cannot be had', () => {
  test.afterEach(({ faults }) => {
    // The browser itself remarks on a file that did not come.
    faults.splice(0, faults.length, ...faults.filter((fault) => !/Failed to (fetch|load)/.test(fault)));
  });

  test('a microphone that is not allowed is said to be, the pads go on, and once allowed it is heard', async ({
    page,
  }) => {
    test.setTimeout(90_000);
    const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('clean'));
    await refuseMicrophone(page, 'NotAllowedError');
    const spoken = new SpokenTo(page);
    await spoken.accept();
    await expect(page.getByText(/The microphone is not allowed here/)).toBeVisible();
    await bench.act(/./);
    await refuseMicrophone(page, undefined);
    await page.getByRole('button', { name: 'try to listen again' }).click();
    await spoken.listens();
    await expect(page.getByText(/The microphone is not allowed here/)).toHaveCount(0);
    const already = (await keptEvents(page)).length;
    await bench.heed();
    await spoken.saysUntil('that is done', async () => (await keptEvents(page)).length > already);
  });

  test('a microphone that goes away midway is taken up again once, and then said to be gone', async ({
    page,
  }) => {
    test.setTimeout(90_000);
    await broughtIn(page, makerOf('hedge-lantern').goTo('clean'));
    const spoken = new SpokenTo(page);
    await spoken.turnOn();
    const asked = () => page.evaluate(() => globalThis.microphone.asked);
    const before = await asked();
    expect(before).toBe(1);
    await loseMicrophone(page);
    await expect.poll(asked).toBe(before + 1);
    await spoken.listens();
    expect(await asked()).toBe(before + 1);
    await loseMicrophone(page);
    await expect(page.getByText(/The microphone went away/)).toBeVisible();
    expect(await asked()).toBe(before + 1);
  });

  test('a fetch that breaks off half-way is said to have, and another try hears', async ({ page }) => {
    test.setTimeout(90_000);
    await broughtIn(page, makerOf('hedge-lantern').goTo('clean'));
    const spoken = new SpokenTo(page);
    const whole = readFileSync('dist/ear/ear.pack');
    // Half of it comes, and then the line breaks.
    await page
      .context()
      .route(/ear\.pack/, (route) => route.fulfill({ body: whole.subarray(0, whole.length / 2) }));
    await spoken.accept();
    await expect(page.getByText(/did not come whole/)).toBeVisible();
    await expect(page.getByText(/did not come whole/)).toHaveCount(1);
    await page.context().unroute(/ear\.pack/);
    await page.getByRole('button', { name: 'try to listen again' }).click();
    await spoken.listens();
    await expect(page.getByText(/did not come whole/)).toHaveCount(0);
  });
});
