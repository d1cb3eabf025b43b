import { timeLeft } from '../workflow/clock';
import type { Instant } from '../domain/unit';
import { MISHAPS } from '../procedure/mishap';
import { isIrreversible } from '../procedure/step';
import type { GuideReport } from './guide-events';
import { whatHappened, type Words } from './guide-text';
import type { Situation } from './situation';

type Type = GuideReport['type'];
type ReportOf<Wanted extends Type> = Extract<GuideReport, { type: Wanted }>;
type Reading = {
  [Each in Type]?: (
    report: ReportOf<Each>,
    words: Words,
    situation: Situation,
    at: Instant,
  ) => string | undefined;
};

/** What is read back before it counts; nothing where a report counts as it is. */
export function readBack(
  report: GuideReport,
  words: Words,
  situation: Situation,
  at: Instant,
): string | undefined {
  const said: Reading[Type] = READ_BACK[report.type];
  const what = said?.(report as never, words, situation, at);
  return what === undefined ? undefined : words.text.guide.right(what);
}

const READ_BACK: Reading = {
  'act done': actDone,
  'sachets accounted': ({ missing }, { text: { guide }, formats }, { now }) => {
    if (missing.length > 0) return guide.readBack.missing(formats.list(missing));
    return now?.act.kind === 'account'
      ? guide.readBack.all(formats.list(now.act.sachets.map(guide.sachet)))
      : undefined;
  },
  'instrument checked': ({ waterReading, waterCelsius }, { text: { guide }, formats }) =>
    guide.readBack.water(formats.spokenGravity(waterReading), formats.spokenCelsius(waterCelsius)),
  'litres measured': ({ litres }, { text: { guide }, formats }) =>
    guide.readBack.litres(formats.litres(litres)),
  'gap measured': ({ millimetres }, { text: { guide }, formats }) =>
    guide.readBack.millimetres(formats.count(millimetres)),
  'temperature taken': ({ celsius }, { text: { guide }, formats }) =>
    guide.readBack.celsius(formats.spokenCelsius(celsius)),
  'bottles counted': ({ bottles, closures, threaded }, { text: { guide }, formats }) =>
    guide.readBack.bottles(formats, bottles, closures, threaded),
  'filled counted': ({ filled }, { text: { guide }, formats }) => guide.readBack.bottled(formats, filled),
  'reading taken': ({ reading, sampleCelsius, wineCelsius, degassed }, { text: { guide }, formats }) =>
    [
      guide.readBack.reading(
        formats.spokenGravity(reading),
        formats.spokenCelsius(sampleCelsius),
        formats.spokenCelsius(wineCelsius),
      ),
      ...(degassed ? [] : [guide.readBack.gassy]),
    ].join(' '),
  judged: ({ what, yes, how }, { text: { guide, judgements } }) =>
    how === 'touch' ? undefined : guide.readBack.answer(yes ? judgements[what].yes : judgements[what].no),
  'mishap told': ({ mishap, sachet, litres }, words, { sachets }) => {
    const { readBack: asked, mishaps, changes } = whatHappened(words);
    return asked(
      mishaps[mishap].title,
      changes[MISHAPS[mishap].change],
      sachets.find(({ id }) => id === sachet)?.printed,
      litres === undefined ? undefined : words.formats.litres(litres),
    );
  },
  'sent back': (_, { text: { guide, places } }, { gate }) =>
    gate?.remedy && guide.readBack.back(places[gate.remedy.to]),
};

function actDone(
  _: ReportOf<'act done'>,
  { text: { guide }, formats }: Words,
  { now, clock }: Situation,
  at: Instant,
): string | undefined {
  if (!now) return undefined;
  if (now.act.kind === 'add') return guide.readBack.added(now.act.sachet);
  if (isIrreversible(now.act)) return guide.readBack.filled;
  const left = clock ? timeLeft(clock, at) : 0;
  return left > 0 ? guide.readBack.early(formats.duration(left)) : undefined;
}
