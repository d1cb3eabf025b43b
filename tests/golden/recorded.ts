import { hash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import type { Facts } from '../../src/procedure/facts';
import { placeOf, type BatchSnapshot } from '../../src/workflow/replay';
import type { Fields } from './event-fields';

/** What a golden batch came to when it was recorded: where it stands, and a digest of every fact by its name. */
export type Outcome = { place: string; entries: number; facts: Record<string, string> };

export type Recorded = { batches: Record<string, Outcome>; events: Record<string, Fields> };

const FILE = 'tests/golden/recorded.json';

/** Recording adds what is missing and never changes what is there. */
export const isRecording = process.env['RECORD_GOLDEN'] === '1';

export const fileOf = (name: string): string => `tests/golden/${name}.json`;

export const readRecorded = (): Recorded =>
  existsSync(FILE) ? (JSON.parse(readFileSync(FILE, 'utf8')) as Recorded) : { batches: {}, events: {} };

export const writeRecorded = (recorded: Recorded): void =>
  writeFileSync(FILE, `${JSON.stringify(recorded, null, 2)}\n`);

/** Keys in one order, whatever order they were added in. */
const inOrder = (_: string, value: unknown): unknown =>
  value !== null && typeof value === 'object' && !Array.isArray(value)
    ? Object.fromEntries(Object.entries(value).toSorted(([a], [b]) => (a < b ? -1 : 1)))
    : value;

const digest = (value: unknown): string => hash('sha256', JSON.stringify(value, inOrder), 'hex').slice(0, 16);

export function outcomeOf(snapshot: BatchSnapshot): Outcome {
  const facts: Facts = snapshot.context.facts;
  return {
    place: placeOf(snapshot),
    entries: facts.entries,
    facts: Object.fromEntries(Object.entries(facts).map(([name, value]) => [name, digest(value)])),
  };
}
