import { describe, expect, test } from 'vitest';
import type { Moment } from '../../domain/calendar';
import type { Instant } from '../../domain/unit';
import { EMPTY_DRAFT, understood, type ReadingDraft } from './reading-draft';

const now: Moment = { at: Date.UTC(2031, 4, 20, 16) as Instant, offsetMinutes: 120 };
const typed: ReadingDraft = {
  sample: '21',
  reading: '996',
  wine: '20,5',
  degassed: 'yes',
  returned: 'no',
  takenAt: '',
};
const of = (changes: Partial<ReadingDraft> = {}) => understood({ ...typed, ...changes }, '°C', now);

describe('a reading as typed', () => {
  test.each(['996', '0.996', '0,996', ' 996 '])('%s is 0.996', (reading) =>
    expect(of({ reading })).toEqual({
      ok: true,
      reading: { reading: 9960, sampleCelsius: 21, wineCelsius: 20.5, degassed: true, returned: false },
    }),
  );

  test('is taken earlier when it says so, on the wall clock of now', () =>
    expect(of({ takenAt: '2031-05-20T17:30' })).toMatchObject({
      ok: true,
      reading: { takenAt: Date.UTC(2031, 4, 20, 15, 30) },
    }));

  test('cannot be taken in the future', () =>
    expect(of({ takenAt: '2031-05-20T18:01' })).toEqual({
      ok: false,
      problems: { takenAt: { code: 'in-the-future', takenAt: Date.UTC(2031, 4, 20, 16, 1) } },
    }));

  test('names what is wrong with each field, all at once', () =>
    expect(
      understood({ ...EMPTY_DRAFT, sample: '70', reading: '0.9', wine: 'warm', takenAt: 'noon' }, '°C', now),
    ).toEqual({
      ok: false,
      problems: {
        sample: { code: 'temperature-misread', given: '70', scale: '°C', lowest: 0, highest: 40 },
        reading: { code: 'gravity-misread', given: '0.9', lowest: 9800, highest: 11_700 },
        wine: { code: 'temperature-misread', given: 'warm', scale: '°C', lowest: 0, highest: 40 },
        takenAt: { code: 'time-misread', given: 'noon' },
        degassed: 'unanswered',
        returned: 'unanswered',
      },
    }));
});
