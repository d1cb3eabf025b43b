import type { Clip } from '../corpus/clip';
import { SPEAKERS, type Speaker } from '../corpus/speakers';
import { openEar, type Ear } from '../hear';
import { isCommand, isNumber, trials, type Room, type Trial } from './commands';
import { AS_THE_APP, PLAIN } from './hearings';
import {
  allAtOnce,
  notOnOffer,
  numbersAsked,
  onOffer,
  plainly,
  talked,
  type Result,
  type Talked,
} from './measure';
import { corpus, rooms, type Quiet } from './sound';

/** How much is measured: each n-th phrase at each level of noise, and each n-th paragraph of prose. */
export type Size = { phrases: number; prose: number };
/** Speakers can be shared out, so that every processor measures some of them. */
export type Part = { nth: number; of: number };

export type AtQuiet = { quiet: Quiet; results: Result[] };
export type Measured = {
  said: Record<'offered' | 'off' | 'all' | 'plain' | 'numbers', AtQuiet[]>;
  talk: Record<'prose' | 'noisy' | 'kitchen' | 'plain', Talked>;
};

export const QUIETS: readonly Quiet[] = ['clean', 20, 15, 10];

/** Each n-th, beginning with one of the first. */
export const every = <T>(all: readonly T[], nth: number, from = 0): T[] =>
  all.filter((_, at) => at % nth === from % nth);

function speakersOf(set: Speaker['set'], { nth, of }: Part): Set<string> {
  const all = SPEAKERS.filter((speaker) => speaker.set === set);
  return new Set(every(all, of, nth).map(({ id }) => id));
}

/** A processor's share of all that is measured. */
export async function measured(set: Speaker['set'], size: Size, part: Part): Promise<Measured> {
  const ear = await openEar();
  const clips = corpus(set);
  const room = rooms(clips);
  const speakers = speakersOf(set, part);
  const mine = clips.filter(({ speaker }) => speakers.has(speaker));
  const prose = mine.filter(({ kind }) => kind === 'prose');
  const kitchen = trials(
    ear,
    room,
    every(
      mine.filter(({ kind }) => kind === 'talk'),
      Math.ceil(size.phrases / 2),
    ),
    'clean',
  );
  return {
    said: phrases(ear, room, mine, size),
    talk: {
      prose: talked(ear, AS_THE_APP, trials(ear, room, every(prose, size.prose), 'clean')),
      noisy: talked(ear, AS_THE_APP, trials(ear, room, every(prose, size.prose * 6), 10)),
      kitchen: talked(ear, AS_THE_APP, kitchen),
      plain: talked(ear, PLAIN, kitchen),
    },
  };
}

function phrases(ear: Ear, room: Room, mine: readonly Clip[], { phrases }: Size) {
  const levels = QUIETS.map((quiet, nth) => ({
    quiet,
    commands: trials(ear, room, every(mine.filter(isCommand), phrases, nth), quiet),
    raw: trials(ear, room, every(mine.filter(isCommand), phrases * 2, nth), quiet, 0),
  }));
  type Level = (typeof levels)[number];
  const of = <T extends Trial>(
    measure: (ear: Ear, all: readonly T[]) => Result[],
    which: (level: Level) => readonly T[],
    some: readonly Level[] = levels,
  ): AtQuiet[] => some.map((level) => ({ quiet: level.quiet, results: measure(ear, which(level)) }));
  return {
    offered: of(onOffer, ({ commands }) => commands),
    off: of(notOnOffer, ({ commands }) => commands, levels.slice(0, 1)),
    all: of(allAtOnce, ({ commands }) => every(commands, 2)),
    plain: of(plainly, ({ raw }) => raw),
    numbers: numbersAt(ear, room, mine, phrases * 2),
  };
}

const numbersAt = (ear: Ear, room: Room, mine: readonly Clip[], nth: number): AtQuiet[] =>
  QUIETS.map((quiet, from) => ({
    quiet,
    results: numbersAsked(ear, trials(ear, room, every(mine.filter(isNumber), nth, from), quiet)),
  }));

/** Numbers by themselves, each n-th at each level of noise. */
export async function numbersMeasured(set: Speaker['set'], nth: number): Promise<AtQuiet[]> {
  const clips = corpus(set);
  return numbersAt(await openEar(), rooms(clips), clips, nth);
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** All the parts as one. */
export function together(parts: readonly Measured[]): Measured {
  const said = (name: keyof Measured['said']) =>
    (parts[0]?.said[name] ?? []).map(({ quiet }, nth) => ({
      quiet,
      results: parts.flatMap((part) => part.said[name][nth]?.results ?? []),
    }));
  const talk = (name: keyof Measured['talk']): Talked => {
    const all = parts.map((part) => part.talk[name]);
    return {
      hours: sum(all.map(({ hours }) => hours)),
      acted: sum(all.map(({ acted }) => acted)),
      asked: sum(all.map(({ asked }) => asked)),
      took: sum(all.map(({ took }) => took)),
      what: all.flatMap(({ what }) => what),
    };
  };
  return {
    said: {
      offered: said('offered'),
      off: said('off'),
      all: said('all'),
      plain: said('plain'),
      numbers: said('numbers'),
    },
    talk: { prose: talk('prose'), noisy: talk('noisy'), kitchen: talk('kitchen'), plain: talk('plain') },
  };
}
