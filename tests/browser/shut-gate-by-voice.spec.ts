import { en } from '../../src/text/en';
import { broughtIn, makerOf } from './brought-in';
import { expect, test } from './fixtures';
import { keptEvents } from './kept-events';
import { withMicrophone } from './microphone';
import { answerTo, atTheShutGate } from './shut-gate';
import { spokenOn } from './spoken';
import { SpokenTo } from './spoken-to';

test.use({ timezoneId: 'UTC' });
test.beforeEach(({ context }) => withMicrophone(context));

/** What leads on elsewhere, and is not on offer here. */
const ONWARDS = ['go on now', 'that is done', 'yes it is', 'ready to continue'];

test('at the gate before the stabiliser, shut, nothing that is said opens it or changes the batch; why is said', async ({
  page,
}) => {
  test.setTimeout(120_000);
  const bench = await atTheShutGate(page);
  const spoken = new SpokenTo(page);
  await spoken.turnOn();
  const already = await keptEvents(page);
  const says = async (phrase: string) => (await answerTo(spoken, phrase)).join(' ');
  /** What is on offer is said again where it was not caught. */
  const answerOf = async (phrase: string) => {
    for (let nth = 0; nth < 3; nth += 1) {
      const answer = await says(phrase);
      if (answer !== '' && answer !== en.ears.misses) return answer;
    }
    return '';
  };

  for (const phrase of ONWARDS) {
    // What is not on offer is not understood, and after a few times that is said.
    expect(['', en.ears.misses], phrase).toContain(await says(phrase));
    await expect(bench.heading).toHaveText('Not yet.');
  }
  expect(await answerOf('why is that')).toBe(en.gates['proving dry'].why);
  expect(await answerOf('what can I say')).toMatch(/^You can say: new reading, once more please/);
  expect(await answerOf('once more please')).toContain(en.guide.notYet);

  // What holds the guide leads back to the same gate, shut as before.
  for (const phrase of ['wait a moment', 'something went wrong']) {
    await spoken.saysUntil(phrase, async () => await bench.pad(/^go on now/).isEnabled());
    await says('yes it is');
    await spoken.saysTo('go on now', /^Not yet\.$/);
  }

  // A number that was asked for can be asked for by voice, and the gate is not passed on the way.
  await spoken.saysTo('new reading', /What does the hydrometer read/);
  for (const phrase of ['go on now', 'that is done']) {
    await says(phrase);
    await expect(bench.heading).toHaveText(/What does the hydrometer read/);
  }
  await spoken.saysUntil('stop listening now', async () => /listen to me/.test(await spoken.ear.innerText()));
  expect(await keptEvents(page)).toEqual(already);
});

test.describe('what the guide says itself, as loud as the room gives it back', () => {
  test.use({ secondsALine: 2 });

  /** Has it said again, twice, and every time plays the same words into the microphone while they are said. */
  async function feedsBack(spoken: SpokenTo, own: string): Promise<void> {
    const { page } = spoken;
    for (let nth = 0; nth < 2; nth += 1) {
      await spoken.listens();
      const before = (await spokenOn(page)).lines.length;
      await page.getByRole('button', { name: /^once more please/ }).click();
      await expect
        .poll(async () => (await spokenOn(page)).lines.slice(before), { intervals: [30], timeout: 20_000 })
        .toContain(own);
      await spoken.plays(own);
    }
    await spoken.listens();
    await page.waitForTimeout(1500);
  }

  test('is no command at a warning, and the maker’s own is', async ({ page }) => {
    test.setTimeout(90_000);
    const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('clean'));
    const spoken = new SpokenTo(page);
    const isWarned = async () => (await bench.pad(/^ready to continue/).count()) > 0;
    await expect(bench.pad(/^ready to continue/)).toBeEnabled({ timeout: 30_000 });
    await spoken.turnOn();
    await feedsBack(spoken, en.guide.say('ready to continue'));
    expect(await isWarned()).toBe(true);
    await spoken.saysUntil('ready to continue', async () => !(await isWarned()));
  });

  test('is no command at an open gate, and the maker’s own is', async ({ page }) => {
    test.setTimeout(90_000);
    await broughtIn(page, makerOf('hedge-lantern').goTo('proving dry'));
    const spoken = new SpokenTo(page);
    await spoken.turnOn();
    const already = (await keptEvents(page)).length;
    await feedsBack(spoken, en.guide.say('go on now'));
    expect(await keptEvents(page)).toHaveLength(already);
    await spoken.saysUntil('go on now', async () => (await keptEvents(page)).length > already);
  });
});
