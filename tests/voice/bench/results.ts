import { SPEAKERS, type Making, type Speaker } from '../corpus/speakers';
import type { Result } from './measure';
import type { AtQuiet, Measured } from './measured';
import { CELLS, cells, latency, table, TALK_CELLS, talkCells } from './report';
import { named, speakerOf } from './sound';
import { percent, tally } from './tally';

const MAKINGS: Record<Making, string> = {
  person: 'voices made from people',
  rules: 'voices made by rule',
  accent: 'other tongues speaking English',
};
const TALK: Record<keyof Measured['talk'], string> = {
  prose: 'prose',
  noisy: 'prose at 10 dB',
  kitchen: 'kitchen talk, chosen for sounding like commands',
  plain: 'the same, the engine by itself',
};

/** A table with a row for each level of noise and kind of voice. */
function byNoise(all: readonly AtQuiet[]): string {
  const rows = all.flatMap(({ quiet, results }) =>
    (Object.keys(MAKINGS) as Making[]).map((making) => [
      named(quiet),
      MAKINGS[making],
      ...cells(results.filter(({ clip }) => speakerOf(clip).making === making)),
    ]),
  );
  const said = rows.filter((row) => row[2] !== '0');
  return table(['noise', 'who', ...CELLS], said);
}

/** A row for each speaker: right, and wrong if any. */
function bySpeaker(all: readonly AtQuiet[], set: Speaker['set']): string {
  const share = (id: string, results: readonly Result[]) => {
    const mine = results.filter(({ clip }) => clip.speaker === id).map(({ outcome }) => outcome);
    const { all: said, right, wrong } = tally(mine);
    return percent(right, said) + (wrong > 0 ? `, ${String(wrong)} wrong` : '');
  };
  const rows = SPEAKERS.filter((speaker) => speaker.set === set).map(({ id }) => [
    id,
    ...all.map(({ results }) => share(id, results)),
  ]);
  return table(['right', ...all.map(({ quiet }) => named(quiet))], rows);
}

/** What was understood least, phrase by phrase. */
function worst(results: readonly Result[]): string {
  const texts = [...new Set(results.map(({ clip }) => clip.text))];
  return texts
    .map((text) => {
      const mine = results.filter(({ clip }) => clip.text === text).map(({ outcome }) => outcome);
      const { all, right } = tally(mine);
      return { share: right / all, told: `${text} ${String(right)}/${String(all)}` };
    })
    .sort((one, other) => one.share - other.share)
    .slice(0, 8)
    .map(({ told }) => told)
    .join(' · ');
}

export const NUMBERS = '## Numbers, while one is asked (each is read back before it counts)';

/** The part of the report that is about numbers. */
export const numbersTold = (all: readonly AtQuiet[]): string =>
  [NUMBERS, byNoise(all), `Least understood in quiet: ${worst(all[0]?.results ?? [])}.`].join('\n\n');

/** The whole report, as Markdown. */
export function results({ said, talk }: Measured, set: Speaker['set']): string {
  const kinds = Object.keys(TALK) as (keyof Measured['talk'])[];
  const clean = said.offered[0]?.results ?? [];
  return [
    '## Commands, while the phrases of one act are on offer',
    byNoise(said.offered),
    bySpeaker(said.offered, set),
    `Least understood at 10 dB: ${worst(said.offered.at(-1)?.results ?? [])}.`,
    '## Commands that are not on offer: nothing may act',
    byNoise(said.off),
    '## Commands, while every phrase is on offer at once',
    byNoise(said.all),
    '## Commands to the engine by itself: every phrase at once, no decoys, noise left in',
    byNoise(said.plain),
    numbersTold(said.numbers),
    '## Talk that is no command',
    table(
      ['talk', ...TALK_CELLS],
      kinds.map((kind) => [TALK[kind], ...talkCells(talk[kind])]),
    ),
    kinds.flatMap((kind) => (kind === 'plain' ? [] : talk[kind].what.map((what) => `- ${what}`))).join('\n'),
    '## Time',
    `From the last sound of a phrase to the act: ${latency(clean)}.`,
    `Hearing takes ${(talk.prose.took / talk.prose.hours / 3600).toFixed(3)} of real time of one processor while somebody talks on and on.`,
    '',
  ].join('\n\n');
}
