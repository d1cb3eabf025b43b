import { asGravity, relativeDensity } from '../../../src/domain/gravity';
import type { Reading } from '../../../src/domain/reading';
import { gravityAsked } from '../../../src/procedure/gravity-asked';
import type { KitSheet } from '../../../src/procedure/kit-sheet';
import { builtInSheets } from '../../../src/procedure/kits';
import { guide } from '../../../src/text/en/guide';
import { COMMANDS, type Command } from '../../../src/voice/commands';
import type { Offer } from '../../../src/voice/grammar-for';
import type { Clip } from '../corpus/clip';
import { RANGES } from '../corpus/numbers';
import { everyOffer } from '../on-offer';
import type { Ear } from '../hear';
import { cut, type Cut } from './cut';
import type { Quiet, rooms } from './sound';

export type Room = ReturnType<typeof rooms>;
/** A recording as the listener cut it: what there is to decode, and when its speech was over. Times in seconds. */
export type Trial<C extends Clip = Clip> = {
  clip: C;
  cuts: Cut[];
  ends: number;
  took: number;
  seconds: number;
};
export type CommandClip = Extract<Clip, { kind: 'command' }>;
export type NumberClip = Extract<Clip, { kind: 'number' }>;

export const isCommand = (clip: Clip): clip is CommandClip => clip.kind === 'command';
export const isNumber = (clip: Clip): clip is NumberClip => clip.kind === 'number';

/** Every recording once, in a room. */
export function trials<C extends Clip>(
  { denoiser }: Ear,
  room: Room,
  clips: readonly C[],
  quiet: Quiet,
  wet?: number,
): Trial<C>[] {
  return clips.map((clip, nth) => {
    const { sound, ends } = room.heard(clip, quiet, nth);
    const { cuts, took } = cut(denoiser, sound, wet);
    return { clip, cuts, ends, took, seconds: sound.length / 16_000 };
  });
}

const phrasesOf = (commands: readonly Command[]): Offer => ({
  phrases: commands.flatMap((command) => guide.commands[command]),
});

const offers = everyOffer();
export const everything: Offer = phrasesOf(COMMANDS);
export const someOffer = (nth: number): Offer => phrasesOf(offers[nth % offers.length] ?? []);

/** An offer that holds the command, or one that does not, in turn; nothing where it is always or never on offer. */
export function offerWith(command: Command, isOnOffer: boolean, nth: number): Offer | undefined {
  const fitting = offers.filter((offer) => offer.includes(command) === isOnOffer);
  const offer = fitting[nth % fitting.length];
  return offer && phrasesOf(offer);
}

/** While a number is asked: it, and what can be said at any act. */
export const offerAsking = ({ asked, value }: NumberClip): Offer => ({
  ...phrasesOf(['again', 'back', 'wait', 'why', 'where are we', 'what can I say', 'something went wrong']),
  numbers: asked === 'gravity' ? { ...RANGES[asked], ...afterTheLast(value) } : RANGES[asked],
});

/** Ten-thousandths that the wine has come down since its last reading: a few days' worth. */
const COME_DOWN = 100;

/** The range in which the app hears a reading of a wine on its way, by its last one. */
function afterTheLast(value: number): { lowest: number; highest: number } {
  const [sheet] = builtInSheets as readonly [KitSheet];
  const last = { read: asGravity(value) + COME_DOWN, struck: false } as Reading;
  const { lowest, highest } = gravityAsked(undefined, sheet, { readings: [last] });
  return { lowest: relativeDensity(lowest), highest: relativeDensity(highest) };
}

const OWNER = new Map(
  COMMANDS.flatMap((command) => guide.commands[command].map((phrase) => [phrase, command] as const)),
);
export const isOf =
  (command: Command) =>
  (said: string | number): boolean =>
    typeof said === 'string' && OWNER.get(said) === command;
