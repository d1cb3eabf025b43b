import type { Moment } from '../../domain/calendar';
import { parseGravity } from '../../domain/gravity';
import { parseLocalTime } from '../../domain/parse-local-time';
import type { Problem } from '../../domain/problem';
import { parseTemperature, type TemperatureScale } from '../../domain/temperature';
import type { EventOf } from '../../workflow/batch-event';

export type YesNo = 'yes' | 'no';

/** A reading as it is typed, before anything of it counts. */
export type ReadingDraft = {
  sample: string;
  reading: string;
  wine: string;
  degassed: YesNo | undefined;
  returned: YesNo | undefined;
  takenAt: string;
};

export const EMPTY_DRAFT: ReadingDraft = {
  sample: '',
  reading: '',
  wine: '',
  degassed: undefined,
  returned: undefined,
  takenAt: '',
};

export type Reading = Pick<
  EventOf<'reading taken'>,
  'reading' | 'sampleCelsius' | 'wineCelsius' | 'degassed' | 'returned' | 'takenAt'
>;
export type DraftProblems = Partial<Record<keyof ReadingDraft, Problem | 'unanswered'>>;
export type Understood = { ok: true; reading: Reading } | { ok: false; problems: DraftProblems };

/** The draft as a reading, or what is wrong with each field: nothing is guessed and nothing typed is changed. */
export function understood(draft: ReadingDraft, scale: TemperatureScale, now: Moment): Understood {
  const sample = parseTemperature(draft.sample, scale);
  const reading = parseGravity(draft.reading);
  const wine = parseTemperature(draft.wine, scale);
  const takenAt = parseLocalTime(draft.takenAt, now);
  const { degassed, returned } = draft;
  if (sample.ok && reading.ok && wine.ok && takenAt.ok && degassed && returned) {
    const at = takenAt.value === undefined ? {} : { takenAt: takenAt.value };
    const read = { reading: reading.value, sampleCelsius: sample.value, wineCelsius: wine.value };
    return {
      ok: true,
      reading: { ...read, degassed: degassed === 'yes', returned: returned === 'yes', ...at },
    };
  }
  const wrong = { sample, reading, wine, takenAt };
  const misread = Object.entries(wrong).flatMap(([field, result]) =>
    result.ok ? [] : [[field, result.problem]],
  );
  return {
    ok: false,
    problems: {
      ...(Object.fromEntries(misread) as DraftProblems),
      ...(degassed ? {} : { degassed: 'unanswered' }),
      ...(returned ? {} : { returned: 'unanswered' }),
    },
  };
}
