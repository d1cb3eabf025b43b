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
const ONWARDS = ['go on now', 'that is done', 'yes it is', 'ready to continue', 'start the clock'];

test('at the gate before the stabiliser, shut, nothing that is said opens it or changes the batch; why is said', async ({
  page,
}) => {
  test.setTimeout(120_000);
  const bench = await atTheShutGate(page);
  const spoken = new SpokenTo(page);
  await spoken.turnOn();
  const already = await keptEvents(page);
  const says = (phrase: string) => answerTo(spoken, phrase);

  for (const phrase of ONWARDS) {
    expect(await says(phrase), phrase).toEqual([]);
    await expect(bench.heading).toHaveText('Not yet.');
  }
  expect(await says('why is that')).toEqual([en.gates['proving dry'].why]);
  expect(await says('what can I say')).toEqual([
    expect.stringMatching(/^You can say: new reading, once more please/),
  ]);
  expect((await says('once more please')).join(' ')).toContain(en.guide.notYet);
  expect(await says('where was I')).not.toEqual([]);

  // What holds the guide leads back to the same gate, shut as before.
  for (const phrase of ['wait a moment', 'something went wrong']) {
    await spoken.saysUntil(phrase, async () => await bench.pad(/^go on now/).isEnabled());
    await says('yes it is');
    await says('that is done');
    await spoken.saysTo('go on now', /^Not yet\.$/);
  }

  // A number that was asked for can be asked for by voice, and the gate is not passed on the way.
  await spoken.saysTo('new reading', /What does the hydrometer read/);
  for (const phrase of ONWARDS) {
    await says(phrase);
    await expect(bench.heading).toHaveText(/What does the hydrometer read/);
  }
  await spoken.saysUntil('stop listening now', async () => /listen to me/.test(await spoken.ear.innerText()));
  expect(await keptEvents(page)).toEqual(already);
});

test.describe('what the guide says, as loud as the room gives it back', () => {
  test.use({ secondsALine: 1.6 });
  const OWN = [en.guide.say('ready to continue'), en.guide.say('that is done')];

  test('is no command, and the same phrase from the maker is', async ({ page }) => {
    test.setTimeout(120_000);
    const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('clean'));
    const spoken = new SpokenTo(page);
    await spoken.turnOn();
    const already = (await keptEvents(page)).length;
    const fedBack: string[] = [];
    let heard = (await spokenOn(page)).lines.length;
    const until = async (times: number) => {
      for (const end = Date.now() + 40_000; fedBack.length < times && Date.now() < end;) {
        const { lines } = await spokenOn(page);
        for (const line of lines.slice(heard)) {
          if (!OWN.includes(line)) continue;
          fedBack.push(line);
          void spoken.plays(line);
        }
        heard = lines.length;
        await page.waitForTimeout(30);
      }
    };
    await page.getByRole('button', { name: /^once more please/ }).click();
    await until(1);
    await page.getByRole('button', { name: /^once more please/ }).click();
    await until(2);
    await spoken.listens();
    await page.waitForTimeout(2000);
    expect(await bench.pad(/^ready to continue/).count()).toBe(1);
    await spoken.saysUntil('ready to continue', async () => (await bench.pad(/^that is done/).count()) > 0);
    await page.getByRole('button', { name: /^once more please/ }).click();
    await until(3);
    await spoken.listens();
    await page.waitForTimeout(2000);
    expect(fedBack).toEqual([OWN[0], OWN[0], OWN[1]]);
    expect(await keptEvents(page)).toHaveLength(already);
    await spoken.saysUntil('that is done', async () => (await keptEvents(page)).length > already);
  });
});
