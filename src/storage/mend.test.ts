import { describe, expect, test } from 'vitest';
import { BEGUN, batch } from '../../tests/story/tabs';
import type { BatchEvent } from '../workflow/batch-event';
import { firstHeader } from '../workflow/header-of';
import { lacking, mend, type Found } from './mend';

const noted = (entry: number): BatchEvent => ({
  type: 'noted',
  how: 'touch',
  text: `entry ${String(entry)}`,
  ...BEGUN,
});
const header = (entries: number) => ({ ...firstHeader({ ...batch(), begun: BEGUN }), entries });

/** A copy: what its header counts, if it has one, and the entries that lie in it. */
const copy = (entries: number | undefined, ...held: number[]): Found => ({
  header: entries === undefined ? undefined : header(entries),
  events: new Map(held.map((entry) => [entry, noted(entry)])),
});
const damaged = (found: Found, entry: number): Found => ({
  ...found,
  events: new Map([...found.events, [entry, { type: 'noted' }]]),
});
const nothing = copy(undefined);

describe('two copies of a batch make one', () => {
  test.each<[string, Found, Found, number, number | undefined]>([
    ['both whole', copy(3, 1, 2, 3), copy(3, 1, 2, 3), 3, undefined],
    ['the first wiped', nothing, copy(3, 1, 2, 3), 3, undefined],
    ['the second wiped', copy(3, 1, 2, 3), nothing, 3, undefined],
    ['the second behind', copy(3, 1, 2, 3), copy(2, 1, 2), 3, undefined],
    ['the first without its header', copy(undefined, 1, 2, 3), copy(3, 1, 2, 3), 3, undefined],
    ['a gap in the first', copy(3, 1, 3), copy(3, 1, 2, 3), 3, undefined],
    ['a gap in the first, the second behind', copy(4, 1, 3, 4), copy(2, 1, 2), 4, undefined],
    ['an event that is damaged in the first', damaged(copy(3, 1, 3), 2), copy(3, 1, 2, 3), 3, undefined],
    ['an event written, its header not', copy(2, 1, 2, 3), copy(2, 1, 2), 3, undefined],
    ['a header ahead of its events', copy(3, 1, 2), copy(2, 1, 2), 2, 3],
    ['a gap in both', copy(4, 1, 3, 4), copy(4, 1, 3, 4), 1, 2],
    ['an event that is damaged in both', damaged(copy(2, 1), 2), damaged(copy(2, 1), 2), 1, 2],
    ['the first event lost', copy(2, 2), copy(2, 2), 0, 1],
  ])('%s', (_, first, second, kept, gap) =>
    expect(mend(first, second)).toEqual({
      header: expect.objectContaining({ id: 'one' }) as unknown,
      events: Array.from({ length: kept }, (_entry, index) => noted(index + 1)),
      ...(gap === undefined ? {} : { problem: { code: 'journal-gap', entry: gap } }),
    }),
  );

  test('none where there is nothing', () => expect(mend(nothing, nothing)).toBeUndefined());

  test.each<[string, Found, object]>([
    ['whose headers are lost', copy(undefined, 1, 2), { code: 'header-lost', entries: 2 }],
    [
      'of a later release',
      { ...nothing, header: { ...header(2), version: 2 } },
      { code: 'newer-format', version: 2 },
    ],
  ])('a batch %s is refused by name', (_, found, problem) =>
    expect(() => mend(found, nothing)).toThrow(expect.objectContaining({ problem })),
  );

  test('where they disagree, the longer one leads', () => {
    const other: Found = { header: header(1), events: new Map([[1, { ...noted(1), text: 'another' }]]) };
    expect(mend(other, copy(2, 1, 2))?.events).toEqual([noted(1), noted(2)]);
  });
});

describe('what a copy lacks', () => {
  const batchOf = (entries: number) => mend(copy(entries, ...[1, 2, 3].slice(0, entries)), nothing)!;

  test.each<[string, Found, number[] | undefined, boolean]>([
    ['nothing', copy(3, 1, 2, 3), undefined, false],
    ['everything', nothing, [1, 2, 3], true],
    ['what came last', copy(2, 1, 2), [3], true],
    ['one in the middle', copy(3, 1, 3), [2], false],
    ['one that is damaged', damaged(copy(3, 1, 3), 2), [2], false],
    ['its header', copy(undefined, 1, 2, 3), [], true],
  ])('%s', (_, found, entries, withHeader) =>
    expect(lacking(found, batchOf(3))).toEqual(
      entries && {
        events: new Map(entries.map((entry) => [entry, noted(entry)])),
        ...(withHeader ? { header: header(3) } : {}),
      },
    ),
  );
});
