import { parseGravity } from '../../domain/gravity';
import type { Problem } from '../../domain/problem';
import { parseTemperature, type TemperatureScale } from '../../domain/temperature';
import type { EventOf } from '../../workflow/batch-event';

/** What is being said of the hydrometer, before it counts. */
export type InstrumentDraft = {
  division: '10' | '20' | undefined;
  calibratedAt: '20' | '15.56' | undefined;
  water: string;
  celsius: string;
};

export const EMPTY_INSTRUMENT: InstrumentDraft = {
  division: undefined,
  calibratedAt: undefined,
  water: '',
  celsius: '',
};

export type Checked = Pick<
  EventOf<'instrument checked'>,
  'division' | 'calibratedAt' | 'waterReading' | 'waterCelsius'
>;
export type InstrumentProblems = Partial<Record<keyof InstrumentDraft, Problem | 'unanswered'>>;

const DIVISIONS = { '10': 10, '20': 20 } as const;
const CALIBRATIONS = { '20': 20, '15.56': 15.56 } as const;

/** The draft as the check of an instrument, or what is wrong with each field. */
export function instrumentIn(
  { division, calibratedAt, water, celsius }: InstrumentDraft,
  scale: TemperatureScale,
): { ok: true; checked: Checked } | { ok: false; problems: InstrumentProblems } {
  const read = parseGravity(water);
  const warmth = parseTemperature(celsius, scale);
  if (read.ok && warmth.ok && division && calibratedAt) {
    const scales = { division: DIVISIONS[division], calibratedAt: CALIBRATIONS[calibratedAt] };
    return { ok: true, checked: { ...scales, waterReading: read.value, waterCelsius: warmth.value } };
  }
  return {
    ok: false,
    problems: {
      ...(division ? {} : { division: 'unanswered' }),
      ...(calibratedAt ? {} : { calibratedAt: 'unanswered' }),
      ...(read.ok ? {} : { water: read.problem }),
      ...(warmth.ok ? {} : { celsius: warmth.problem }),
    },
  };
}
