import { decibels } from './decibels';
import { DECODED_RATE, LONGEST, type Decoder, type Hearing } from './decoder';
import type { Denoiser } from './denoiser';
import { ENDPOINTING, endpointer, type Turn } from './endpointer';
import { frontEnd, type Heard } from './front-end';
import { roomMeter, type Room } from './room';
import { utterance } from './utterance';

/** What the listener tells. Of an utterance in which no sentence of the grammar was found there is no hearing. */
export type ListenerNews =
  { type: 'heard'; hearing: Hearing | undefined; snr: number; seconds: number } | ({ type: 'room' } & Room);

export type Listener = {
  /** Samples within ±1, one channel, in chunks of any size. */
  hear: (samples: Float32Array) => void;
  listenFor: (grammar: string, against?: string) => void;
  /** Hears nothing from now on, and forgets what was being said. */
  shut: () => void;
  /** Begins anew, once the room's own echo of what we said has died away. */
  open: () => void;
};

export type Hears = {
  /** Samples a second, as they come in. */
  rate: number;
  denoiser: Denoiser;
  decoder: Decoder;
  tell: (news: ListenerNews) => void;
  /** How much of the sound is taken without its noise, 0 to 1. */
  wet?: number;
  /** Milliseconds after opening in which nothing begins. */
  tail?: number;
};

const FRAMES_A_SECOND = 100;
const ROOM_EVERY = FRAMES_A_SECOND / 5;
const WET = 0.8;
const TAIL = 350;

/** From the microphone to what was said: noise off, found where it begins and ends, decoded. */
export function listener({ rate, denoiser, decoder, tell, wet = WET, tail = TAIL }: Hears): Listener {
  const front = frontEnd(rate, denoiser, wet);
  const { next, forget } = utterances(decoder, tell);
  let isOpen = true;
  let deafFor = 0;
  return {
    hear(samples) {
      if (!isOpen) return;
      for (const heard of front.frames(samples))
        if (deafFor > 0) deafFor -= 1;
        else next(heard);
    },
    listenFor(grammar, against) {
      forget();
      decoder.setGrammar(grammar, against);
    },
    shut() {
      isOpen = false;
      front.drop();
      forget();
    },
    open() {
      isOpen = true;
      deafFor = Math.round((tail / 1000) * FRAMES_A_SECOND);
    },
  };
}

/** Gathers frames into utterances, has them decoded, and tells how the room sounds. */
function utterances(decoder: Decoder, tell: (news: ListenerNews) => void) {
  const ends = endpointer();
  const meter = roomMeter();
  const said = utterance();
  let decoded: { hearing: Hearing | undefined; seconds: number } | undefined;
  let sinceRoom = 0;
  const decode = (hung: number, lead: number) => {
    const samples = said.samples(hung, lead);
    const seconds = samples.length / DECODED_RATE;
    return { hearing: seconds > LONGEST ? undefined : decoder.decode(samples), seconds };
  };
  const forget = () => {
    decoded = undefined;
    said.clear();
    meter.forget();
  };
  const follow = (turn: Turn) => {
    if (turn.turn === 'begun') said.begin(turn.past);
    // Decoded while we wait whether more comes, so that the wait is all that it takes.
    if (turn.turn === 'pausing') decoded = decode(ENDPOINTING.pause, turn.lead);
    if (turn.turn === 'over') {
      const heard = decoded && turn.hung >= ENDPOINTING.pause ? decoded : decode(turn.hung, turn.lead);
      tell({ type: 'heard', ...heard, snr: meter.spoken() });
    }
    if (turn.turn === 'over' || turn.turn === 'nothing') forget();
  };
  const next = ({ speech, power, cleanLevel, sound }: Heard) => {
    const floor = meter.next(power, speech >= ENDPOINTING.startsAt);
    said.add(sound);
    follow(ends.next({ speech, level: decibels(power), cleanLevel, floor }));
    if (++sinceRoom < ROOM_EVERY) return;
    sinceRoom = 0;
    tell({ type: 'room', ...meter.room() });
  };
  const forgetAll = () => {
    ends.reset();
    forget();
  };
  return { next, forget: forgetAll };
}
