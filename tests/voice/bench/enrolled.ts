import type { Hearing } from '../../../src/voice/ear/decoder';
import { asHeard, type Offer } from '../../../src/voice/grammar-for';
import type { Understood } from '../../../src/voice/hearing-of';
import type { Clip } from '../corpus/clip';
import { SPEAKERS, type Speaker } from '../corpus/speakers';
import { openEar, type Ear } from '../hear';
import {
  isCommand,
  isOf,
  offerWith,
  someOffer,
  trials,
  type CommandClip,
  type Room,
  type Trial,
} from './commands';
import type { Cut } from './cut';
import { AS_THE_APP } from './hearings';
import { every } from './measured';
import { table } from './report';
import { corpus, named, rooms, type Quiet } from './sound';
import { outcomeOf, percent, quantile, tally, type Outcome } from './tally';
import { distance, templateOf, type Template } from './templates';

/**
 * What a maker's own way of saying each phrase would add as a second opinion: taught by the slow recordings in a quiet
 * room, asked about the others.
 */

type Taught = ReadonlyMap<string, Template>;
type Opinion = { phrase: string; distance: number; next: number };
type Heard = { hearing: Hearing | undefined; understood: Understood; opinion: Opinion | undefined };

// Chosen on the voices for tuning: nine of ten phrases that were heard rightly lie nearer than `FITS`.
const FITS = 46;
const CLEARER = 1.08;
const LEVELS: readonly Quiet[] = ['clean', 15, 10];

/** A speaker's own way of saying each phrase; one that is not found in its own recording is not learnt. */
function taughtBy(ear: Ear, room: Room, slow: readonly Clip[]): Taught {
  const taught = new Map<string, Template>();
  for (const { clip, cuts } of trials(ear, room, slow, 'clean')) {
    AS_THE_APP.load(ear, { phrases: [clip.text] });
    const samples = cuts[0]?.samples;
    const hearing = samples && ear.decoder.decode(samples);
    const template = hearing && templateOf(ear.decoder, samples, hearing);
    if (template) taught.set(asHeard(clip.text), template);
  }
  return taught;
}

function opinionOf(ear: Ear, { samples }: Cut, hearing: Hearing, taught: Taught): Opinion | undefined {
  const said = templateOf(ear.decoder, samples, hearing);
  if (!said) return undefined;
  const [nearest, next] = [...taught]
    .map(([phrase, template]) => ({ phrase, distance: distance(said, template) }))
    .sort((one, other) => one.distance - other.distance);
  return nearest && { ...nearest, next: next?.distance ?? Infinity };
}

function heardIn(ear: Ear, cuts: readonly Cut[], offer: Offer, taught: Taught): Heard[] {
  AS_THE_APP.load(ear, offer);
  return cuts.map((cut) => {
    const hearing = ear.decoder.decode(cut.samples);
    const opinion = hearing && opinionOf(ear, cut, hearing, taught);
    return { hearing, understood: AS_THE_APP.understand(hearing, offer, cut.snr), opinion };
  });
}

/** The second opinion may refuse what was sure, and make sure what was not. */
function weighed({ hearing, understood, opinion }: Heard, offer: Offer): Understood {
  if (!hearing || !opinion) return understood;
  const agrees = opinion.phrase === hearing.words;
  if (understood && 'sure' in understood) return agrees && opinion.distance <= FITS ? understood : undefined;
  const isClear = opinion.next >= opinion.distance * CLEARER;
  const phrase = offer.phrases.find((each) => asHeard(each) === hearing.words);
  return agrees && isClear && opinion.distance <= FITS && phrase !== undefined
    ? { sure: phrase }
    : understood;
}

export type Enrolled = {
  phrases: { quiet: Quiet; alone: Outcome; together: Outcome; distances: number[] }[];
  talk: { alone: boolean; together: boolean }[];
};

/** What came of a phrase, and how far it lies from its template where it was heard rightly. */
function phrase(ear: Ear, { clip, cuts }: Trial<CommandClip>, offer: Offer, taught: Taught) {
  const heard = heardIn(ear, cuts, offer, taught);
  const outcome = (understood: readonly Understood[]) => outcomeOf(understood, isOf(clip.command));
  const alone = outcome(heard.map(({ understood }) => understood));
  const together = outcome(heard.map((each) => weighed(each, offer)));
  const opinion = heard[0]?.opinion;
  const isNearest = alone === 'right' && opinion?.phrase === asHeard(clip.text);
  return { alone, together, distances: isNearest ? [opinion.distance] : [] };
}

const acts = (understood: Understood): boolean => understood !== undefined && 'sure' in understood;

function ofSpeaker(ear: Ear, room: Room, mine: readonly Clip[], step: number): Enrolled {
  const commands = mine.filter(isCommand);
  const taught = taughtBy(
    ear,
    room,
    commands.filter(({ slow }) => slow),
  );
  const asked = commands.filter(({ slow }) => !slow);
  const phrases = LEVELS.flatMap((quiet, level) =>
    trials(ear, room, every(asked, step, level), quiet).flatMap((trial, nth) => {
      const offer = offerWith(trial.clip.command, true, nth);
      return offer ? [{ quiet, ...phrase(ear, trial, offer, taught) }] : [];
    }),
  );
  const talk = every(
    mine.filter(({ kind }) => kind === 'talk'),
    step,
  );
  return {
    phrases,
    talk: trials(ear, room, talk, 'clean').map(({ cuts }, nth) => {
      const offer = someOffer(nth);
      const heard = heardIn(ear, cuts, offer, taught);
      return {
        alone: heard.some(({ understood }) => acts(understood)),
        together: heard.some((each) => acts(weighed(each, offer))),
      };
    }),
  };
}

/** Each speaker taught by their own slow recordings: with and without. `step`: each so manieth phrase. */
export async function enrolled(set: Speaker['set'], step: number): Promise<Enrolled> {
  const ear = await openEar();
  const clips = corpus(set);
  const room = rooms(clips);
  const parts = SPEAKERS.filter((speaker) => speaker.set === set).map(({ id }) =>
    ofSpeaker(
      ear,
      room,
      clips.filter(({ speaker }) => speaker === id),
      step,
    ),
  );
  return {
    phrases: parts.flatMap(({ phrases }) => phrases),
    talk: parts.flatMap(({ talk }) => talk),
  };
}

/** The report of it, as Markdown. */
export function enrolledReport({ phrases, talk }: Enrolled): string {
  const distances = phrases.flatMap((each) => each.distances);
  const at = (share: number) => quantile(distances, share).toFixed(2);
  const rows = LEVELS.map((quiet) => {
    const mine = phrases.filter((each) => each.quiet === quiet);
    const shares = (outcomes: readonly Outcome[]) => {
      const { all, right, wrong } = tally(outcomes);
      return [percent(right, all), percent(wrong, all)];
    };
    const [alone, together] = [mine.map((each) => each.alone), mine.map((each) => each.together)];
    return [named(quiet), ...shares(alone), ...shares(together)];
  });
  const count = (which: 'alone' | 'together') => String(talk.filter((each) => each[which]).length);
  return [
    '## With the maker’s own templates as a second opinion (not shipped)',
    table(['noise', 'right', 'wrong', 'right with it', 'wrong with it'], rows),
    `Of ${String(talk.length)} pieces of kitchen talk that sounds like commands ${count('alone')} act, with it ${count('together')}.`,
    `How far what was rightly heard lies from its template: half within ${at(0.5)}, nine of ten within ${at(0.9)}.`,
    '',
  ].join('\n\n');
}
