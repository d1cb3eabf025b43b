import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { broughtIn, makerOf } from './brought-in';
import { expect, test } from './fixtures';
import { keptEvents } from './kept-events';
import { SpokenTo } from './spoken-to';

const SAID = 'tests/voice/clips/that-is-done.wav';
const HEADER = 44;
const SECONDS_BEFORE = 5;
const SECONDS_AFTER = 2;

/** The clip with silence before and after it: the device begins to play as soon as it is opened. */
function withSilence(clip: string): string {
  const bytes = readFileSync(clip);
  const rate = bytes.readUInt32LE(24);
  const silence = (seconds: number) => Buffer.alloc(seconds * rate * 2);
  const sound = [silence(SECONDS_BEFORE), bytes.subarray(HEADER), silence(SECONDS_AFTER)];
  const header = Buffer.from(bytes.subarray(0, HEADER));
  const length = sound.reduce((sum, part) => sum + part.length, 0);
  header.writeUInt32LE(HEADER - 8 + length, 4);
  header.writeUInt32LE(length, 40);
  const file = join(mkdtempSync(join(tmpdir(), 'microphone-')), 'said.wav');
  writeFileSync(file, Buffer.concat([header, ...sound]));
  return file;
}

test.use({
  timezoneId: 'UTC',
  launchOptions: async ({ launchOptions }, use) => {
    const said = withSilence(SAID);
    const device = ['--use-fake-device-for-media-stream', '--use-fake-ui-for-media-stream'];
    const plays = `--use-file-for-fake-audio-capture=${said}%noloop`;
    await use({ ...launchOptions, args: [...(launchOptions.args ?? []), ...device, plays] });
    rmSync(dirname(said), { recursive: true });
  },
});

test('a phrase that comes from a device’s own microphone is acted on', async ({ page }) => {
  const bench = await broughtIn(page, makerOf('hedge-lantern').goTo('clean'));
  await expect(bench.pad(/^ready to continue/)).toBeEnabled();
  await bench.heed();
  await expect(bench.pad(/^that is done/)).toBeEnabled();
  const already = (await keptEvents(page)).length;
  await new SpokenTo(page).turnOn();
  expect(await keptEvents(page)).toHaveLength(already);
  await expect
    .poll(async () => (await keptEvents(page)).slice(already), { timeout: 15_000 })
    .toMatchObject([{ type: 'act done', how: 'voice' }]);
});
