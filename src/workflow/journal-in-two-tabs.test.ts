import fc from 'fast-check';
import { beforeEach, describe, expect, test } from 'vitest';
import { draws } from '../../tests/story/draws';
import { MemoryJournalStore } from '../../tests/story/memory-journal-store';
import { batch, BEGUN, Device, sure, whole } from '../../tests/story/tabs';
import type { Problem } from '../domain/problem';
import type { BatchEvent } from './batch-event';
import { Journal, type Told } from './journal';

const laidOut: Told = { type: 'sachets accounted', how: 'touch', act: 'lay out sachets 1', missing: [] };
const noted = (text: string): Told => ({ type: 'noted', how: 'touch', text });
const stamped = (told: Told) => ({ ...told, ...BEGUN }) as BatchEvent;

const says = fc.array(
  fc.oneof(
    fc.constant(laidOut),
    fc
      .string({ minLength: 1, maxLength: 3, unit: 'grapheme-ascii' })
      .filter((text) => text.trim() === text)
      .map(noted),
  ),
  { maxLength: 4 },
);
const asText = (event: BatchEvent): string => JSON.stringify([event.type, 'text' in event ? event.text : '']);
/** Said twice, or overtaken twice in a row: the two reasons for which a report may be turned away. */
const isHonest = (problem: Problem | undefined): boolean =>
  problem?.code === 'already-done' || problem?.code === 'written-elsewhere';

let device: Device;
let store: MemoryJournalStore;
let journal: Journal;

beforeEach(async () => {
  device = new Device();
  store = new MemoryJournalStore();
  journal = sure(await Journal.begin(device.tab(store), batch()));
});

describe('a second tab', () => {
  const both = async (deaf: boolean) => ({
    here: journal,
    there: sure(await Journal.open(device.tab(store, { deaf }), 'one')),
  });

  test('shows what the first one wrote', async () => {
    const { here, there } = await both(false);
    await here.report(laidOut);
    await there.refresh();
    expect(whole(there)).toEqual(whole(here));
  });

  test('that did not hear of it reads again before it writes', async () => {
    const { here, there } = await both(true);
    await here.report(noted('here'));
    expect(await there.report(noted('there'))).toBeUndefined();
    expect(there.events).toEqual([stamped(noted('here')), stamped(noted('there'))]);
  });

  test('that says the same is told that it is done', async () => {
    const { here, there } = await both(true);
    await here.report(laidOut);
    expect(await there.report(laidOut)).toEqual({ code: 'already-done' });
    expect(whole(there)).toEqual(whole(here));
  });

  test('loses nothing, however its calls and those of the first fall between each other', () =>
    fc.assert(
      fc.asyncProperty(fc.scheduler(), says, says, fc.boolean(), async (scheduler, one, two, deaf) => {
        store = new MemoryJournalStore();
        journal = sure(await Journal.begin(device.tab(store, { deaf }), batch()));
        const { here, there } = await both(deaf);
        store.before = () => scheduler.schedule(Promise.resolve());
        const said = [
          ...one.map((told) => ({ by: here, told })),
          ...two.map((told) => ({ by: there, told })),
        ];
        const answers = await scheduler.waitFor(Promise.all(said.map(({ by, told }) => by.report(told))));
        const taken = said.filter((_, index) => answers[index] === undefined);
        await scheduler.waitFor(Promise.all([here.refresh(), there.refresh()]));
        expect(whole(there)).toEqual(whole(here));
        expect(here.events.map(asText).toSorted()).toEqual(
          taken.map(({ told }) => asText(stamped(told))).toSorted(),
        );
        expect(answers.filter(Boolean).every(isHonest)).toBe(true);
      }),
      draws(100, 2000),
    ));

  test('that loses twice gives up, and has changed nothing', async () => {
    const { there } = await both(true);
    store.append = () => Promise.resolve('collision');
    expect(await there.report(laidOut)).toEqual({ code: 'written-elsewhere' });
    expect(there.events).toEqual([]);
  });

  test('takes nothing more once the batch is removed', async () => {
    await store.remove('one');
    expect(await journal.report(laidOut)).toEqual({ code: 'no-such-batch' });
    expect({ mismatch: journal.mismatch, again: await journal.report(laidOut) }).toEqual({
      mismatch: { code: 'no-such-batch' },
      again: { code: 'no-such-batch' },
    });
  });
});
