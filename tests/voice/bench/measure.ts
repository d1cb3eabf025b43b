import type { Clip } from '../corpus/clip';
import {
  everything,
  isOf,
  offerAsking,
  offerWith,
  someOffer,
  type CommandClip,
  type NumberClip,
  type Trial,
} from './commands';
import { AS_THE_APP, decodeAll, decodeEach, PLAIN } from './hearings';
import { outcomeOf, type Outcome } from './tally';
import type { Offer } from '../../../src/voice/grammar-for';
import type { Ear } from '../hear';

/** What came of one recording, and what it took after the words were over. */
export type Result<C extends Clip = Clip> = { clip: C; outcome: Outcome; late: number; decoding: number };

type Asked<C extends Clip> = { trial: Trial<C>; offer: Offer; isRight: (said: string | number) => boolean };

function results<C extends Clip>(ear: Ear, way: typeof PLAIN, all: readonly Asked<C>[]): Result<C>[] {
  const done = decodeEach(
    ear,
    way,
    all.map(({ trial: { cuts }, offer }) => ({ cuts, offer })),
  );
  return all.map(({ trial, isRight }, nth) => {
    const mine = done[nth] ?? [];
    const outcome = outcomeOf(
      mine.map(({ understood }) => understood),
      isRight,
    );
    const last = trial.cuts.at(-1);
    const decoding = mine.at(-1)?.took ?? 0;
    // It is decoded while we wait whether more comes.
    const late = last ? Math.max(last.over, last.decoded + decoding) - trial.ends : Number.NaN;
    return { clip: trial.clip, outcome, late, decoding };
  });
}

type OfCommands = (ear: Ear, all: readonly Trial<CommandClip>[]) => Result<CommandClip>[];

const commandsIn =
  (way: typeof PLAIN, offerFor: (command: CommandClip, nth: number) => Offer | undefined): OfCommands =>
  (ear, all) =>
    results(
      ear,
      way,
      all.flatMap((trial, nth) => {
        const offer = offerFor(trial.clip, nth);
        return offer ? [{ trial, offer, isRight: isOf(trial.clip.command) }] : [];
      }),
    );

/** Commands while what is on offer at some act can be heard, as in the app. */
export const onOffer = commandsIn(AS_THE_APP, ({ command }, nth) => offerWith(command, true, nth));
/** Commands that are not on offer: whatever acts is wrong. */
export const notOnOffer = commandsIn(AS_THE_APP, ({ command }, nth) => offerWith(command, false, nth));
export const allAtOnce = commandsIn(AS_THE_APP, () => everything);
/** The engine by itself: every phrase, no decoys, nothing weighed. */
export const plainly = commandsIn(PLAIN, () => everything);

export const numbersAsked = (ear: Ear, all: readonly Trial<NumberClip>[]): Result<NumberClip>[] =>
  results(
    ear,
    AS_THE_APP,
    all.map((trial) => ({
      trial,
      offer: offerAsking(trial.clip),
      isRight: (said) => said === trial.clip.value,
    })),
  );

export type Talked = { hours: number; acted: number; asked: number; what: string[]; took: number };

/** Talk that is no command, each piece while something else is on offer. */
export function talked(ear: Ear, way: typeof PLAIN, all: readonly Trial[], offerFor = someOffer): Talked {
  const pieces = all.flatMap(({ clip, cuts }) => cuts.map((cut) => ({ clip, cut })));
  const jobs = pieces.map(({ cut }, nth) => ({ cut, offer: offerFor(nth) }));
  const done = decodeAll(ear, way, jobs);
  const hits = done.flatMap(({ understood }, nth) =>
    understood ? [{ understood, clip: pieces[nth]!.clip }] : [],
  );
  const acted = hits.filter(({ understood }) => 'sure' in understood);
  return {
    hours: all.reduce((sum, { seconds }) => sum + seconds, 0) / 3600,
    acted: acted.length,
    asked: hits.length - acted.length,
    what: acted.map(
      ({ understood, clip }) =>
        `${clip.speaker}: ${Object.values(understood).join()}, said in “${clip.text.slice(0, 60)}”`,
    ),
    took: [...all, ...done].reduce((sum, { took }) => sum + took, 0),
  };
}
