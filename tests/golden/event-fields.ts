import type * as v from 'valibot';
import { batchEvent } from '../../src/workflow/batch-event';

/** What a journal's event may hold: its fields, whether each may be absent, and the words that a field chooses among. */
export type Fields = Record<string, { optional?: true; oneOf?: string[] }>;

type Entry = v.GenericSchema & { wrapped?: Entry; options?: readonly unknown[] };

function fieldOf(entry: Entry): Fields[string] {
  const { options } = entry.wrapped ?? entry;
  return {
    ...(entry.type === 'optional' ? { optional: true } : {}),
    ...(options ? { oneOf: options.map(String).toSorted() } : {}),
  };
}

/** Every type of event with its fields, as this release reads them. */
export const eventFields = (): Record<string, Fields> =>
  Object.fromEntries(
    batchEvent.options.map(({ entries }) => [
      entries.type.literal,
      Object.fromEntries(
        Object.entries(entries)
          .filter(([name]) => name !== 'type')
          .map(([name, entry]) => [name, fieldOf(entry as unknown as Entry)]),
      ),
    ]),
  );

/** Why an event as an earlier release wrote it may be unreadable now. */
export function unreadable(then: Record<string, Fields>, now: Record<string, Fields>): string[] {
  return Object.entries(then).flatMap(([type, fields]) => {
    const known = now[type];
    return known ? fieldsUnreadable(type, fields, known) : [`"${type}" is gone`];
  });
}

function fieldsUnreadable(type: string, then: Fields, now: Fields): string[] {
  const added = Object.entries(now)
    .filter(([name, { optional }]) => !(name in then) && !optional)
    .map(([name]) => `"${type}" demands a new field, ${name}: make it optional`);
  const changed = Object.entries(then).flatMap(([name, { optional, oneOf = [] }]) => {
    const field = now[name];
    if (!field) return [`"${type}" no longer takes ${name}`];
    const lost = field.oneOf ? oneOf.filter((word) => !field.oneOf?.includes(word)) : [];
    return [
      ...(optional && !field.optional ? [`"${type}" demands ${name}, which could be absent`] : []),
      ...lost.map((word) => `"${type}" no longer takes ${name}: ${word}`),
    ];
  });
  return [...added, ...changed];
}
