import { expect, test } from 'vitest';
import { parseLocalTime } from './parse-local-time';
import type { Instant } from './unit';

const now = { at: Date.UTC(2031, 4, 20, 16) as Instant, offsetMinutes: 120 };

test.each([
  ['', { ok: true, value: undefined }],
  ['2031-05-20T17:30', { ok: true, value: Date.UTC(2031, 4, 20, 15, 30) }],
  ['2031-05-20T18:00', { ok: true, value: Date.UTC(2031, 4, 20, 16) }],
  [
    '2031-05-20T18:01',
    { ok: false, problem: { code: 'in-the-future', takenAt: Date.UTC(2031, 4, 20, 16, 1) } },
  ],
  ['noon', { ok: false, problem: { code: 'time-misread', given: 'noon' } }],
])('"%s", at six in the evening by the wall', (given, expected) =>
  expect(parseLocalTime(given, now)).toEqual(expected),
);
