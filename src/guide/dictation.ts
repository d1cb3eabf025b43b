import type { Gravity } from '../domain/gravity';
import type { Celsius, Litres } from '../domain/unit';
import type { Act } from '../procedure/step';
import type { GuideReport } from './guide-events';
import type { Situation } from './situation';

/** What can be asked of a maker who fills in a card by voice. */
export type Answers = {
  reading: Gravity;
  sampleCelsius: Celsius;
  wineCelsius: Celsius;
  degassed: boolean;
  returned: boolean;
  celsius: Celsius;
  litres: Litres;
  millimetres: number;
  bottles: number;
  closures: number;
  threaded: boolean;
  filled: number;
  isCoarse: boolean;
  isOfSixty: boolean;
  waterReading: Gravity;
  waterCelsius: Celsius;
};
export type Field = keyof Answers;
export type YesNoField = { [Each in Field]: Answers[Each] extends boolean ? Each : never }[Field];
export type NumberField = Exclude<Field, YesNoField>;

/** A card that is being filled in by voice: one thing is asked after another, and nothing counts before it is read back. */
export type Dictation = { fields: readonly Field[]; answers: Partial<Answers> };

const FIELDS: Partial<Record<Act['kind'], readonly Field[]>> = {
  reading: ['reading', 'sampleCelsius', 'wineCelsius', 'degassed', 'returned'],
  temperature: ['celsius'],
  litres: ['litres'],
  gap: ['millimetres'],
  bottles: ['bottles', 'closures', 'threaded'],
  filled: ['filled'],
  instrument: ['isCoarse', 'isOfSixty', 'waterReading', 'waterCelsius'],
};

/** What has to be asked where the guide stands; outside an act only a reading can be given. */
export const dictationAt = ({ now }: Situation): Dictation => ({
  fields: FIELDS[now?.act.kind ?? 'reading'] ?? FIELDS.reading ?? [],
  answers: {},
});

/** What is asked next; nothing once all is answered. */
export const askedIn = ({ fields, answers }: Dictation): Field | undefined =>
  fields.find((field) => answers[field] === undefined);

/** What was answered last. */
export const lastIn = ({ fields, answers }: Dictation): Field | undefined =>
  fields.findLast((field) => answers[field] !== undefined);

const YES_OR_NO: ReadonlySet<Field> = new Set<YesNoField>([
  'degassed',
  'returned',
  'threaded',
  'isCoarse',
  'isOfSixty',
]);
export const isYesNo = (field: Field): field is YesNoField => YES_OR_NO.has(field);

/** An answer came through its field's own door; nothing takes it back. */
export const withAnswer = (
  { fields, answers }: Dictation,
  field: Field,
  answer: number | boolean | undefined,
): Dictation => ({ fields, answers: { ...answers, [field]: answer } });

type Making = (answers: Answers, act: string) => GuideReport;

const how = 'voice';
const MADE: Partial<Record<Act['kind'], Making>> = {
  temperature: ({ celsius }, act) => ({ type: 'temperature taken', how, act, celsius }),
  litres: ({ litres }, act) => ({ type: 'litres measured', how, act, litres }),
  gap: ({ millimetres }, act) => ({ type: 'gap measured', how, act, millimetres }),
  bottles: ({ bottles, closures, threaded }, act) => ({
    type: 'bottles counted',
    ...{ how, act, bottles, closures, threaded },
  }),
  filled: ({ filled }, act) => ({ type: 'filled counted', how, act, filled }),
  instrument: ({ isCoarse, isOfSixty, waterReading, waterCelsius }, act) => ({
    type: 'instrument checked',
    ...{ how, act, waterReading, waterCelsius },
    division: isCoarse ? 20 : 10,
    calibratedAt: isOfSixty ? 15.56 : 20,
  }),
};

/** The report that a full dictation comes to. */
export function dictated({ answers }: Dictation, { now }: Situation): GuideReport {
  // Every field of its card is answered.
  const full = answers as Answers;
  const made = now && MADE[now.act.kind];
  if (made) return made(full, now.act.id);
  const { reading, sampleCelsius, wineCelsius, degassed, returned } = full;
  const act = now?.act.kind === 'reading' ? { act: now.act.id } : {};
  return {
    type: 'reading taken',
    how,
    ...act,
    ...{ reading, sampleCelsius, wineCelsius, degassed, returned },
  };
}
