import { SPEAKERS, type Making, type Speaker } from '../corpus/speakers';
import { isCommand, isNumber, trials, type Trial } from './commands';
import { openEars, type Ears } from './ears';
import { AS_THE_APP, PLAIN } from './hearings';
import { allAtOnce, notOnOffer, numbersAsked, onOffer, plainly, talked, type Result } from './measure';
import { CELLS, cells, latency, table, TALK_CELLS, talkCells } from './report';
import { corpus, rooms, speakerOf, type Quiet } from './sound';
import { percent, tally } from './tally';

/** How much is measured: each n-th phrase, and each n-th paragraph of prose. */
export type Size = { phrases: number; prose: number };

const QUIETS: readonly Quiet[] = ['clean', 20, 15, 10];
const MAKINGS: Record<Making, string> = {
  person: 'voices made from people',
  rules: 'voices made by rule',
  accent: 'other tongues speaking English',
};

const named = (quiet: Quiet): string => (quiet === 'clean' ? 'clean' : `${String(quiet)} dB`);
const every = <T>(all: readonly T[], nth: number): T[] => all.filter((_, at) => at % nth === 0);

/** A table with a row for each level of noise and kind of voice. */
function byNoise(all: readonly { quiet: Quiet; results: readonly Result[] }[]): string {
  const rows = all.flatMap(({ quiet, results }) =>
    (Object.keys(MAKINGS) as Making[]).map((making) => [
      named(quiet),
      MAKINGS[making],
      ...cells(results.filter(({ clip }) => speakerOf(clip).making === making)),
    ]),
  );
  return table(
    ['noise', 'who', ...CELLS],
    rows.filter((cell) => cell[2] !== '0'),
  );
}

/** A row for each speaker: right, and wrong if any. */
function bySpeaker(
  all: readonly { quiet: Quiet; results: readonly Result[] }[],
  set: Speaker['set'],
): string {
  const share = (id: string, results: readonly Result[]) => {
    const {
      all: said,
      right,
      wrong,
    } = tally(results.filter(({ clip }) => clip.speaker === id).map(({ outcome }) => outcome));
    return percent(right, said) + (wrong > 0 ? `, ${String(wrong)} wrong` : '');
  };
  return table(
    ['right', ...all.map(({ quiet }) => named(quiet))],
    SPEAKERS.filter((speaker) => speaker.set === set).map(({ id }) => [
      id,
      ...all.map(({ results }) => share(id, results)),
    ]),
  );
}

/** The phrases that were missed, asked about or taken for another most. */
function worst(results: readonly Result[]): string {
  const texts = [...new Set(results.map(({ clip }) => clip.text))];
  return texts
    .map((text) => {
      const { all, right } = tally(
        results.filter(({ clip }) => clip.text === text).map(({ outcome }) => outcome),
      );
      return { text, share: right / all, told: `${text} ${String(right)}/${String(all)}` };
    })
    .sort((one, other) => one.share - other.share)
    .slice(0, 8)
    .map(({ told }) => told)
    .join(' · ');
}

function said(ears: Ears, set: Speaker['set'], { phrases }: Size) {
  const clips = corpus(set);
  const room = rooms(clips);
  const commands = every(clips.filter(isCommand), phrases);
  const numbers = every(clips.filter(isNumber), phrases);
  const cutAll = QUIETS.map((quiet) => ({ quiet, trials: trials(ears, room, commands, quiet) }));
  const of = (measure: typeof onOffer, only = cutAll) =>
    only.map(({ quiet, trials: some }) => ({ quiet, results: measure(ears, some) }));
  const raw = QUIETS.map((quiet) => ({ quiet, trials: trials(ears, room, commands, quiet, 0) }));
  return {
    offered: of(onOffer),
    all: of(allAtOnce),
    plain: of(plainly, raw),
    off: of(notOnOffer, cutAll.slice(0, 1)),
    numbers: QUIETS.map((quiet) => ({
      quiet,
      results: numbersAsked(ears, trials(ears, room, numbers, quiet)),
    })),
  };
}

const took = (all: readonly Trial[]): number => all.reduce((sum, trial) => sum + trial.took, 0);
const lasts = (all: readonly Trial[]): number => all.reduce((sum, { seconds }) => sum + seconds, 0);

function unsaid(ears: Ears, set: Speaker['set'], { prose }: Size) {
  const clips = corpus(set);
  const room = rooms(clips);
  const isProse = ({ kind }: { kind: string }) => kind === 'prose';
  const kitchen = trials(
    ears,
    room,
    clips.filter(({ kind }) => kind === 'talk'),
    'clean',
  );
  const read = trials(ears, room, every(clips.filter(isProse), prose), 'clean');
  const noisy = trials(ears, room, every(clips.filter(isProse), prose * 6), 10);
  const rows = [
    { of: 'prose', talk: talked(ears, AS_THE_APP, read) },
    { of: 'prose at 10 dB', talk: talked(ears, AS_THE_APP, noisy) },
    { of: 'kitchen talk, much of it like a command', talk: talked(ears, AS_THE_APP, kitchen) },
    { of: 'kitchen talk, the engine by itself', talk: talked(ears, PLAIN, kitchen) },
  ];
  const first = rows[0]?.talk.took ?? 0;
  return { rows, realTime: (took(read) + first) / lasts(read) };
}

/** Measures how well the ears of the app hear, and gives the report. */
export async function benchVoice(
  set: Speaker['set'],
  size: Size,
  tell: (line: string) => void,
): Promise<string> {
  const ears = await openEars();
  const heard = said(ears, set, size);
  tell('Phrases are measured; talk is next.');
  const { rows, realTime } = unsaid(ears, set, size);
  const clean = heard.offered[0]?.results ?? [];
  return [
    '## Commands, while the phrases of one act are on offer',
    byNoise(heard.offered),
    bySpeaker(heard.offered, set),
    `Least understood at 10 dB: ${worst(heard.offered.at(-1)?.results ?? [])}.`,
    '## Commands that are not on offer: nothing may act',
    byNoise(heard.off),
    '## Commands, while every phrase is on offer at once',
    byNoise(heard.all),
    '## Commands to the engine by itself: every phrase at once, no decoys, noise left in',
    byNoise(heard.plain),
    '## Numbers, while one is asked (each is read back before it counts)',
    byNoise(heard.numbers),
    `Least understood in quiet: ${worst(heard.numbers[0]?.results ?? [])}.`,
    '## Talk that is no command',
    table(
      ['talk', ...TALK_CELLS],
      rows.map(({ of, talk }) => [of, ...talkCells(talk)]),
    ),
    ...rows.slice(0, 2).flatMap(({ talk }) => talk.what.map((what) => `- ${what}`)),
    '## Time',
    `From the last sound of a phrase to the act: ${latency(clean)}.`,
    `All of it takes ${realTime.toFixed(3)} of real time of one processor while somebody talks on and on.`,
    '',
  ].join('\n\n');
}
