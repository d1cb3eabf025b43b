import { expect, test } from 'vitest';
import { FakeEngine } from '../../tests/story/fake-engines';
import { SimulatedClock } from '../../tests/story/simulated-clock';
import type { Voice } from './engine';
import { VoiceSearch } from './voice-search';

const ANNA: Voice = { id: 'anna', name: 'Anna', language: 'en-GB', local: true };

/** What was found whenever something was told, after so many milliseconds of watching. */
async function watched(ways: ConstructorParameters<typeof FakeEngine>[1], language: string, long: number) {
  const clock = new SimulatedClock();
  const search = new VoiceSearch(new FakeEngine(clock, ways), clock.after, language);
  const told = [{ at: clock.now() as number, found: search.found() }];
  const stop = search.watch(() => told.push({ at: clock.now(), found: search.found() }));
  await clock.pass(long);
  stop();
  await clock.pass(60_000);
  return told;
}

test.each([
  ['that are there at once are found at once', { voicesFrom: 0 }, 'en', [[0, [ANNA]]]],
  [
    'that come late are told of',
    { voicesFrom: 1200 },
    'en',
    [
      [0, undefined],
      [1250, [ANNA]],
    ],
  ],
  [
    'that are not there in two seconds are none',
    { voicesFrom: 90_000 },
    'en',
    [
      [0, undefined],
      [2000, []],
    ],
  ],
  [
    'that come after all are told of',
    { voicesFrom: 5100 },
    'en',
    [
      [0, undefined],
      [2000, []],
      [5250, [ANNA]],
    ],
  ],
  [
    'that speak another language are none',
    { voicesFrom: 0 },
    'de',
    [
      [0, undefined],
      [2000, []],
    ],
  ],
] as const)('voices %s', async (_, ways, language, expected) =>
  expect(await watched(ways, language, 30_000)).toEqual(expected.map(([at, found]) => ({ at, found }))),
);

test('nothing is told once the watching has stopped', async () =>
  expect(await watched({ voicesFrom: 1200 }, 'en', 1000)).toEqual([{ at: 0, found: undefined }]));
