import type { Answers, Field } from './dictation';
import type { Words } from './guide-text';

type Said = { [Each in Field]?: (answer: Answers[Each], words: Words) => string };

const gravity: Said['reading'] = (value, { formats }) => formats.spokenGravity(value);
const celsius: Said['celsius'] = (value, { formats }) => formats.spokenCelsius(value);

const SAID: Said = {
  reading: gravity,
  waterReading: gravity,
  sampleCelsius: celsius,
  wineCelsius: celsius,
  waterCelsius: celsius,
};

/** What was taken, said back before the next question: a number digit by digit, a yes or no as its sentence. */
export function spokenAnswer(field: Field, answer: number | boolean, words: Words): string {
  const { dictated } = words.text;
  if (typeof answer === 'boolean') return dictated.answers[answer ? 'yes' : 'no'];
  const said = SAID[field] as ((answer: number, words: Words) => string) | undefined;
  return dictated.echo(said ? said(answer, words) : words.formats.count(answer));
}
