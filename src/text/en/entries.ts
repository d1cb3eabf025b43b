import type { Rung } from '../../procedure/facts';
import type { BatchEvent, EventOf, EventType } from '../../workflow/batch-event';
import type { EntryWords } from '../entry-words';
import { mishaps } from './mishaps';
import { override } from './override';

type Line<Type extends EventType> = (event: EventOf<Type>, words: EntryWords, entry: number) => string;

const quoted = (words: string): string => `“${words}”`;

const numbered = (entries: readonly number[], { formats, reading }: EntryWords): string =>
  formats.list(
    entries.map((entry) => {
      const known = reading(entry);
      return known ? `${formats.gravity(known.gravity)} (entry ${String(entry)})` : `entry ${String(entry)}`;
    }),
  );

const rungs: Record<Rung, string> = {
  'read again': 'it was read again, and its warmth too',
  warmed: 'it was warmed by two or three degrees',
  roused: 'the yeast was stirred up',
  'fresh starter': 'a fresh, working starter went in',
};

/** A journal's lines, one for each type of event. */
const lines: { [Type in EventType]: Line<Type> } = {
  'act done': ({ act }, words) => `Done: ${words.act(act)}.`,
  'sachets accounted': ({ missing }, { formats }) =>
    missing.length === 0
      ? 'Every sachet of the sheet was in the box.'
      : `Not in the box: ${formats.list(missing)}.`,
  'instrument checked': ({ division, calibratedAt, waterReading, waterCelsius }, { formats }) =>
    `Hydrometer: a line every ${division === 10 ? '0.001' : '0.002'}, made for ${String(calibratedAt)} °C. In plain water of ${formats.celsius(waterCelsius)} it showed ${formats.gravity(waterReading)}.`,
  'litres measured': ({ act, litres }, words) => `${words.act(act)}: ${words.formats.litres(litres)}.`,
  'bottles counted': ({ bottles, closures, threaded }, { formats }) =>
    `Counted ${formats.count(bottles)} sound bottles ${threaded ? 'with a screw thread' : 'without a thread'} and ${formats.count(closures)} closures.`,
  'filled counted': ({ filled }, { formats }) => `Filled and closed ${formats.count(filled)} bottles.`,
  'temperature taken': ({ act, celsius }, words) => `${words.act(act)}: ${words.formats.celsius(celsius)}.`,
  'reading taken': readingLine,
  judged: (event, words) => words.answer(event),
  'clock started': ({ act }, words) => `The clock started for ${quoted(words.act(act))}.`,
  'clock paused': ({ act }, words) => `The clock was held for ${quoted(words.act(act))}.`,
  'clock resumed': ({ act }, words) => `The clock went on for ${quoted(words.act(act))}.`,
  'clock extended': ({ act, seconds }, words) =>
    `The clock got ${words.formats.duration(seconds)} more for ${quoted(words.act(act))}.`,
  'gate passed': ({ gate, rules, readings }, words) =>
    `Gate passed: ${words.gate(gate)} Judged by the house rules, edition ${String(rules)}${
      readings.length > 0 ? `, on ${numbered(readings, words)}` : ''
    }.`,
  'sent back': (event, words) => words.back(event),
  'gap measured': ({ millimetres }, { formats }) =>
    `From the wine to the stopper: ${formats.count(millimetres)} mm.`,
  'sugar tested': ({ gramsPerLitre }, { formats }) =>
    `The sugar test showed ${formats.grams(gramsPerLitre)} in a litre.`,
  overridden: ({ clause, reason }) => override.afterwards(clause, reason),
  'left out': ({ sachet, reason }, words) => override.leaveOut.afterwards(words.sachet(sachet), reason),
  helped: ({ rung }) => `Help for a stuck wine: ${rungs[rung]}.`,
  'away planned': ({ from, until }, { formats }) =>
    `Away from ${formats.date(from)} until ${formats.date(until)}.`,
  'reading struck': ({ entry, reason }) => `The reading of entry ${String(entry)} was struck: ${reason}`,
  'mishap told': ({ mishap, sachet, litres }, words) =>
    [
      mishaps[mishap].entry,
      ...(sachet === undefined ? [] : [`It was ${quoted(words.sachet(sachet))}.`]),
      ...(litres === undefined ? [] : [`It was ${words.formats.litres(litres)}.`]),
    ].join(' '),
  'mishap struck': ({ entry, reason }) => `What was told in entry ${String(entry)} was taken back: ${reason}`,
  'looked again': ({ entry, well }) =>
    `Looked again after entry ${String(entry)}: ${well ? 'all is well' : 'not yet as it should be'}.`,
  'wrappers counted': ({ empty }, words) =>
    `Counted the empty wrappers, and they agree: ${words.formats.list(empty.map(words.sachet))}.`,
  joined: ({ since, reached, litres, filled }, words) =>
    `Joined: running since ${words.formats.date(since)}, come as far as ${quoted(words.place(reached))}${
      litres === undefined ? '' : `, with ${words.formats.litres(litres)}`
    }${filled === undefined ? '' : `, in ${words.formats.count(filled)} bottles`}.`,
  noted: ({ text }) => `Note: ${text}`,
  ended: ({ end, reason }, words) => `${words.place(end)}: ${reason}`,
};

function readingLine(
  { reading, sampleCelsius, wineCelsius, degassed, returned, confirmed }: EventOf<'reading taken'>,
  words: EntryWords,
  entry: number,
): string {
  const { formats } = words;
  const corrected = words.reading(entry);
  return [
    `Read ${formats.gravity(reading)} in a sample of ${formats.celsius(sampleCelsius)}${
      corrected ? `: corrected, ${formats.gravity(corrected.gravity)}` : ''
    }.`,
    `The wine itself was ${formats.celsius(wineCelsius)}.`,
    degassed ? 'The sample was degassed' : 'The sample still held gas',
    returned ? 'and went back.' : 'and was not poured back.',
    ...(confirmed === true ? ['It was asked whether that is right, and answered with yes.'] : []),
  ].join(' ');
}

const ways: Record<BatchEvent['how'], string> = {
  touch: 'by touch',
  key: 'by key',
  voice: 'by voice',
  timer: 'by the clock',
  import: 'brought in',
};

export const entries = {
  /** The plain sentence of one event. */
  line: (event: BatchEvent, words: EntryWords, entry: number): string =>
    (lines[event.type] as Line<EventType>)(event, words, entry),
  sentBack: (gate: string, to: string) => `${gate} Not yet: back to ${quoted(to)}.`,
  answered: (question: string, answer: string) => `${question} ${answer}.`,
  ways,
};
