import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { RULES } from '../../src/domain/gates/passing';
import { ENDS } from '../../src/procedure/phase';
import type { BatchEvent } from '../../src/workflow/batch-event';
import { readBatchFile, writeBatchFile, type ReadBatch } from '../../src/workflow/batch-file';
import { replay } from '../../src/workflow/replay';
import { sure } from '../story/tabs';
import { eventFields, unreadable, type Fields } from './event-fields';
import { fileOf, isRecording, outcomeOf, readRecorded, writeRecorded } from './recorded';
import { STORIES } from './stories';

/** Records the stories that have no file yet, and the fields that are new. */
function recordWhatIsNew(): void {
  const recorded = readRecorded();
  for (const [name, story] of Object.entries(STORIES)) {
    if (name in recorded.batches) continue;
    const maker = story();
    const identity = { id: name, name: name.replaceAll('-', ' '), ...maker.input };
    writeFileSync(fileOf(name), writeBatchFile(identity, maker.journal));
    recorded.batches[name] = outcomeOf(maker.snapshot);
  }
  for (const [type, fields] of Object.entries(eventFields()))
    recorded.events[type] = { ...fields, ...recorded.events[type] };
  writeRecorded(recorded);
}

beforeAll(() => {
  if (isRecording) recordWhatIsNew();
});

const batchIn = (name: string): ReadBatch => {
  const batch = known.get(name) ?? sure(readBatchFile(readFileSync(fileOf(name), 'utf8')));
  known.set(name, batch);
  return batch;
};
const known = new Map<string, ReadBatch>();
const eventsIn = (names: readonly string[]): BatchEvent[] =>
  names.flatMap((name) => [...batchIn(name).events]);

describe.each(Object.keys(STORIES))('the golden batch %s', (name) => {
  test('is recorded: `npm run golden` does that', () =>
    expect({ file: existsSync(fileOf(name)), outcome: name in readRecorded().batches }).toEqual({
      file: true,
      outcome: true,
    }));

  test('replays to where it stood, with the facts that were known', () => {
    const { header, events } = batchIn(name);
    const { snapshot, mismatch } = replay(header, events);
    expect(mismatch).toBeUndefined();
    expect(outcomeOf(snapshot)).toMatchObject(readRecorded().batches[name] ?? {});
  });

  test('is written again as it was read', () => {
    const { header, events } = batchIn(name);
    expect(writeBatchFile(header, events)).toBe(readFileSync(fileOf(name), 'utf8'));
  });
});

describe('the golden batches between them', () => {
  const names = Object.keys(STORIES);

  test('use every kit sheet, and hold corrections, an override, ways back, a time away and an honest end', () => {
    expect(new Set(names.map((name) => batchIn(name).header.sheet.id)).size).toBe(3);
    expect([...new Set(eventsIn(names).map(({ type }) => type))]).toEqual(
      expect.arrayContaining([
        'reading struck',
        'overridden',
        'sent back',
        'away planned',
        'left out',
        'ended',
      ]),
    );
    expect(names.every((name) => ENDS.some((end) => end === batchIn(name).header.place))).toBe(true);
  });

  test('hold one of an earlier edition, which today’s clauses would have stopped', () => {
    const { header, events } = batchIn('earlier-rules-hedge-lantern');
    const earlier = events.filter((event) => event.type === 'gate passed' && event.rules < RULES);
    expect(earlier.map((event) => event.type === 'gate passed' && event.gate)).toEqual([
      'proving dry',
      'proving gas-free',
      'proving clear',
      'proving still',
    ]);
    const stopped = earlier.map((event) => {
      const today = events.map((each) => (each === event ? { ...event, rules: RULES } : each));
      const { mismatch } = replay(header, today);
      return mismatch?.code === 'journal-mismatch' ? mismatch.reason.code : 'not stopped';
    });
    expect(stopped).toEqual(['still-falling', 'gas-not-tested', 'clearing-too-short', 'gas-not-tested']);
  });
});

describe('an event that an earlier release wrote', () => {
  const then = () => readRecorded().events;

  test('is readable: no field was taken away, and none that is new is demanded', () =>
    expect(unreadable(then(), eventFields())).toEqual([]));

  test('has all its fields recorded here, for later releases: `npm run golden` does that', () =>
    expect(unreadable(eventFields(), then()).concat(unrecorded(then(), eventFields()))).toEqual([]));
});

const unrecorded = (then: Record<string, Fields>, now: Record<string, Fields>): string[] =>
  Object.entries(now).flatMap(([type, fields]) =>
    Object.keys(fields)
      .filter((field) => !(field in (then[type] ?? {})))
      .map((field) => `"${type}" has a field that is not recorded: ${field}`),
  );
