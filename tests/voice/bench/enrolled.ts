import { DECOYS } from '../../../src/voice/decoys';
import type { Hearing } from '../../../src/voice/ear/decoder';
import { asHeard, grammarAgainst, grammarFor, type Offer } from '../../../src/voice/grammar-for';
import { hearingOf, type Understood } from '../../../src/voice/hearing-of';
import type { Clip } from '../corpus/clip';
import { SPEAKERS, type Speaker } from '../corpus/speakers';
import { openEar, type Ear } from '../hear';
import { everything, isCommand, isOf, offerWith, someOffer, trials, type Room } from './commands';
import type { Cut } from './cut';
import { table } from './report';
import { corpus, rooms, type Quiet } from './sound';
import { outcomeOf, percent, tally, type Outcome } from './tally';
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

function listenFor({ decoder }: Ear, offer: Offer): void {
  decoder.setGrammar(grammarFor(offer), grammarAgainst(offer, everything.phrases, DECOYS));
}

/** A speaker's own way of saying each phrase; one that is not found in its own recording is not learnt. */
function taughtBy(ear: Ear, room: Room, slow: readonly Clip[]): Taught {
  const taught = new Map<string, Template>();
  for (const { clip, cuts } of trials(ear, room, slow, 'clean')) {
    listenFor(ear, { phrases: [clip.text] });
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

function heardIn(ear: Ear, cut: Cut, offer: Offer, taught: Taught): Heard {
  const hearing = ear.decoder.decode(cut.samples);
  const opinion = hearing && opinionOf(ear, cut, hearing, taught);
  return { hearing, understood: hearingOf(hearing, offer, cut.snr), opinion };
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
  phrases: { quiet: Quiet; alone: Outcome; together: Outcome }[];
  talk: { alone: boolean; together: boolean }[];
  /** How far phrases that were heard rightly lie from their templates. */
  distances: number[];
};

const acts = (understood: Understood): boolean => understood !== undefined && 'sure' in understood;

function ofSpeaker(ear: Ear, room: Room, mine: readonly Clip[], every: number): Enrolled {
  const slow = mine.filter((clip) => isCommand(clip) && clip.slow);
  const taught = taughtBy(ear, room, slow);
  const all: Enrolled = { phrases: [], talk: [], distances: [] };
  const asked = mine.filter(isCommand).filter(({ slow }) => !slow);
  LEVELS.forEach((quiet, level) => {
    const some = asked.filter((_, nth) => nth % every === level % every);
    trials(ear, room, some, quiet).forEach(({ clip, cuts }, nth) => {
      const offer = offerWith(clip.command, true, nth);
      if (!offer) return;
      listenFor(ear, offer);
      const isRight = isOf(clip.command);
      const heard = cuts.map((cut) => heardIn(ear, cut, offer, taught));
      const alone = outcomeOf(
        heard.map(({ understood }) => understood),
        isRight,
      );
      const together = outcomeOf(
        heard.map((each) => weighed(each, offer)),
        isRight,
      );
      all.phrases.push({ quiet, alone, together });
      if (alone === 'right' && heard[0]?.opinion?.phrase === asHeard(clip.text))
        all.distances.push(heard[0].opinion.distance);
    });
  });
  const talk = mine.filter(({ kind }) => kind === 'talk').filter((_, nth) => nth % every === 0);
  trials(ear, room, talk, 'clean').forEach(({ cuts }, nth) => {
    const offer = someOffer(nth);
    listenFor(ear, offer);
    const heard = cuts.map((cut) => heardIn(ear, cut, offer, taught));
    all.talk.push({
      alone: heard.some(({ understood }) => acts(understood)),
      together: heard.some((each) => acts(weighed(each, offer))),
    });
  });
  return all;
}

/** Each speaker taught by their own slow recordings: with and without. `every`: each so manieth phrase. */
export async function enrolled(set: Speaker['set'], every: number): Promise<Enrolled> {
  const ear = await openEar();
  const clips = corpus(set);
  const room = rooms(clips);
  const parts = SPEAKERS.filter((speaker) => speaker.set === set).map(({ id }) =>
    ofSpeaker(
      ear,
      room,
      clips.filter(({ speaker }) => speaker === id),
      every,
    ),
  );
  return {
    phrases: parts.flatMap(({ phrases }) => phrases),
    talk: parts.flatMap(({ talk }) => talk),
    distances: parts.flatMap(({ distances }) => distances),
  };
}

/** The report of it, as Markdown. */
export function enrolledReport({ phrases, talk, distances }: Enrolled): string {
  const sorted = [...distances].sort((one, other) => one - other);
  const at = (share: number) => (sorted[Math.floor(share * (sorted.length - 1))] ?? Number.NaN).toFixed(2);
  const rows = LEVELS.map((quiet) => {
    const mine = phrases.filter((each) => each.quiet === quiet);
    const [alone, together] = [mine.map((each) => each.alone), mine.map((each) => each.together)].map(tally);
    const name = quiet === 'clean' ? 'clean' : `${String(quiet)} dB`;
    return [
      name,
      ...[alone, together].flatMap((all) =>
        all ? [percent(all.right, all.all), percent(all.wrong, all.all)] : [],
      ),
    ];
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
