import { A_PHRASE, hearingOf, type ByNoise, type Understood } from '../../../src/voice/hearing-of';
import type { Offer } from '../../../src/voice/grammar-for';
import type { Clip } from '../corpus/clip';
import { openEar, type Ear } from '../hear';
import { isCommand, isOf, offerWith, someOffer, trials, type CommandClip, type Trial } from './commands';
import { AS_THE_APP, decodeEach, type Done } from './hearings';
import { every, QUIETS } from './measured';
import { table } from './report';
import { corpus, named, rooms, speakerOf } from './sound';
import { outcomeOf, percent, tally } from './tally';

/** The same demands in quiet and in noise, but for how well the sounds must fit. */
function asMuch(margin: number, inside: number, noise: keyof ByNoise): ByNoise {
  const { unsure, sure } = A_PHRASE[noise];
  const both = { unsure, sure: { ...sure, margin, inside } };
  return { quiet: both, noisy: both };
}

/** So much of `margin` and `inside` at any noise; what is used comes last. */
const ROWS: readonly (readonly [name: string, demands: ByNoise])[] = [
  ...(['noisy', 'quiet'] as const).flatMap((noise) =>
    [
      [0, 0],
      [20, 35],
      [35, 50],
      [50, 70],
      [60, 85],
      [80, 110],
      [110, 140],
    ].map(([margin = 0, inside = 0]): [string, ByNoise] => [
      `${String(margin)} / ${String(inside)}, ${noise === 'noisy' ? 'looser' : 'stricter'} elsewhere`,
      asMuch(margin, inside, noise),
    ]),
  ),
  ['as used: stricter in quiet', A_PHRASE],
];

/** Something heard once, to be weighed by each row. */
type Heard<C extends Clip> = { clip: C; offer: Offer; cuts: { snr: number; done: Done }[] };

function heard<C extends Clip>(
  ear: Ear,
  all: readonly Trial<C>[],
  offerFor: (clip: C, nth: number) => Offer | undefined,
): Heard<C>[] {
  const asked = all.flatMap(({ clip, cuts }, nth) => {
    const offer = offerFor(clip, nth);
    return offer ? [{ clip, offer, cuts }] : [];
  });
  const done = decodeEach(ear, AS_THE_APP, asked);
  return asked.map(({ clip, offer, cuts }, nth) => ({
    clip,
    offer,
    cuts: cuts.map(({ snr }, at) => ({ snr, done: done[nth]![at]! })),
  }));
}

const weighed = ({ offer, cuts }: Heard<Clip>, demands: ByNoise): Understood[] =>
  cuts.map(({ snr, done }) => hearingOf(done.hearing, offer, snr, demands));

const acts = (one: Heard<Clip>, demands: ByNoise): number =>
  weighed(one, demands).filter((each) => each && 'sure' in each).length;

type Column = { name: string; of: (demands: ByNoise) => string };

function right(name: string, all: readonly Heard<CommandClip>[]): Column {
  const of = (demands: ByNoise) => {
    const outcomes = all.map((one) => outcomeOf(weighed(one, demands), isOf(one.clip.command)));
    const { right, wrong, all: said } = tally(outcomes);
    return percent(right, said) + (wrong > 0 ? `, ${String(wrong)} wrong` : '');
  };
  return { name: `${name} (${String(all.length)})`, of };
}

const acted = (name: string, all: readonly Heard<Clip>[]): Column => ({
  name: `${name} (${String(all.length)})`,
  of: (demands) => String(all.reduce((sum, one) => sum + acts(one, demands), 0)),
});

/** What each row of demands would make of the tuning voices: each n-th phrase, each sound decoded once. As Markdown. */
export async function curve(nth: number): Promise<string> {
  const ear = await openEar();
  const clips = corpus('tune');
  const room = rooms(clips);
  const commands = clips.filter(isCommand).filter((clip) => speakerOf(clip).making === 'person');
  const talk = (kind: Clip['kind']) => clips.filter((clip) => clip.kind === kind);
  const onOffer = QUIETS.map((quiet, from) => {
    const said = trials(ear, room, every(commands, nth, from), quiet);
    return right(
      named(quiet),
      heard(ear, said, ({ command }, at) => offerWith(command, true, at)),
    );
  });
  const off = (['clean', 15] as const).map((quiet) => {
    const said = trials(ear, room, every(commands, nth * 2), quiet);
    return acted(
      `off offer, ${named(quiet)}`,
      heard(ear, said, ({ command }, at) => offerWith(command, false, at)),
    );
  });
  const chatter = (
    [
      ['kitchen talk', talk('talk'), 'clean'],
      ['prose', every(talk('prose'), nth), 'clean'],
      ['prose at 10 dB', every(talk('prose'), nth * 3), 10],
    ] as const
  ).map(([name, said, quiet]) => {
    const all = trials(ear, room, said, quiet);
    const minutes = all.reduce((sum, { seconds }) => sum + seconds, 0) / 60;
    return acted(
      `${name}, ${minutes.toFixed(0)} minutes`,
      heard(ear, all, (_, at) => someOffer(at)),
    );
  });
  const columns = [...onOffer, ...off, ...chatter];
  const rows = ROWS.map(([name, demands]) => [name, ...columns.map(({ of }) => of(demands))]);
  return table(['margin / inside', ...columns.map(({ name }) => name)], rows);
}
