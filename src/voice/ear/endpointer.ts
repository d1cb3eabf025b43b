import { decibels } from './decibels';

/** A hundredth of a second, as it is judged. Levels in dB below full scale. */
export type Frame = {
  /** How likely it is speech, 0 to 1, as the denoiser says. */
  speech: number;
  /** As it came in, and what is left of it without its noise. */
  level: number;
  cleanLevel: number;
  /** The noise that is always there. */
  floor: number | undefined;
};

/** Times in frames, levels in dB. */
export type Endpointing = {
  startsAt: number;
  staysAt: number;
  /** A start stands out of the noise by this much, and is not fainter than this without it. */
  aboveFloor: number;
  faintest: number;
  /** Speech that is fainter than its loudest by this much is over, its noise taken away. */
  belowPeak: number;
  /**
   * What others say in the room is speech too. The maker's is over once it is not this much above the noise and fainter
   * than its loudest by this much, both as they came in; and what was as faint before it is not theirs.
   */
  keepsAboveFloor: number;
  belowLoudest: number;
  /** Frames over which loudness is taken, and that are loud together where the maker's speech begins. */
  smooth: number;
  run: number;
  /** An utterance begins once so many of the last so many frames were speech. */
  sustained: number;
  of: number;
  hang: number;
  /** So far into the hang all that will be decoded is there. */
  pause: number;
  longest: number;
  /** What was speech for fewer frames was a knock or a cough. */
  shortest: number;
};

export const ENDPOINTING: Endpointing = {
  startsAt: 0.6,
  staysAt: 0.35,
  // These five are chosen on the voices for tuning, with six others talking 10 to 20 dB below them.
  aboveFloor: 6,
  keepsAboveFloor: 10,
  belowLoudest: 10,
  smooth: 8,
  run: 5,
  faintest: -65,
  belowPeak: 32,
  sustained: 7,
  of: 10,
  hang: 36,
  pause: 20,
  longest: 600,
  shortest: 15,
};

/** What a frame did to the utterance. `past` counts the frames since its first, itself among them. */
export type Turn =
  | { turn: 'quiet' }
  | { turn: 'begun'; past: number }
  | { turn: 'going on' }
  /** It may be over: if it is, it is over as it is now. `lead` counts the frames at its beginning that are only the room. */
  | { turn: 'pausing'; lead: number }
  | { turn: 'over'; hung: number; lead: number }
  | { turn: 'nothing' };

export type Endpointer = { next: (frame: Frame) => Turn; reset: () => void };

type Going = {
  frames: number;
  spoken: number;
  hung: number;
  /** The loudest so far: without its noise, and as it came in. */
  peak: number;
  loudest: number;
  /** How loud each frame was as it came in. */
  loudness: number[];
};

/** Finds where an utterance begins and ends. One that grows too long is ended, and none begins until it is quiet. */
export function endpointer(settings: Endpointing = ENDPOINTING): Endpointer {
  const loudnessOf = smoothed(settings.smooth);
  const start = beginning(settings);
  let going: Going | undefined;
  const begin = (frame: Frame, loudness: number): Turn => {
    going = start.next(frame, loudness);
    return going ? { turn: 'begun', past: going.frames } : { turn: 'quiet' };
  };
  const goOn = (so: Going, frame: Frame, loudness: number): Turn => {
    const turn = follow(so, frame, loudness, settings);
    if (turn.turn !== 'over' && turn.turn !== 'nothing') return turn;
    going = undefined;
    if (so.frames >= settings.longest) start.waitForQuiet();
    return turn;
  };
  return {
    reset() {
      going = undefined;
      start.reset();
    },
    next(frame) {
      const loudness = loudnessOf(frame.level);
      return going ? goOn(going, frame, loudness) : begin(frame, loudness);
    },
  };
}

/** Waits for the beginning of an utterance: speech that is sustained, once it has been quiet where that is waited for. */
function beginning({ sustained, of, startsAt, aboveFloor, faintest }: Endpointing) {
  let lately: { isSpeech: boolean; loudness: number }[] = [];
  let waitsForQuiet = false;
  const goingSince = (peak: number): Going => {
    const loudness = lately.slice(lately.findIndex(({ isSpeech }) => isSpeech)).map((each) => each.loudness);
    const spoken = lately.filter(({ isSpeech }) => isSpeech).length;
    lately = [];
    return { frames: loudness.length, spoken, hung: 0, peak, loudest: Math.max(...loudness), loudness };
  };
  return {
    next(frame: Frame, loudness: number): Going | undefined {
      const standsOut = frame.floor === undefined || loudness > frame.floor + aboveFloor;
      const isSpeech = frame.speech >= startsAt && standsOut && frame.cleanLevel > faintest;
      lately = [...lately, { isSpeech, loudness }].slice(-of);
      const spoken = lately.filter((each) => each.isSpeech).length;
      if (waitsForQuiet) waitsForQuiet = lately.length < of || spoken > 0;
      return waitsForQuiet || spoken < sustained ? undefined : goingSince(frame.cleanLevel);
    },
    waitForQuiet: () => (waitsForQuiet = true),
    reset() {
      lately = [];
      waitsForQuiet = false;
    },
  };
}

/** What the next frame does to an utterance that is going on. */
function follow(so: Going, frame: Frame, loudness: number, settings: Endpointing): Turn {
  const { staysAt, belowPeak, hang, pause, longest, shortest, run } = settings;
  so.peak = Math.max(so.peak, frame.cleanLevel);
  so.loudest = Math.max(so.loudest, loudness);
  so.loudness.push(loudness);
  const faintest = faintestOf(so, frame, settings);
  const isTheirs = loudness > faintest && frame.cleanLevel > so.peak - belowPeak;
  const isSpeech = frame.speech >= staysAt && isTheirs;
  so.frames += 1;
  so.spoken += isSpeech ? 1 : 0;
  so.hung = isSpeech ? 0 : so.hung + 1;
  const isLong = so.spoken >= shortest;
  const lead = () => leadOf(so.loudness, faintest, run);
  if (so.hung < hang && so.frames < longest)
    return isLong && so.hung === pause ? { turn: 'pausing', lead: lead() } : { turn: 'going on' };
  return isLong ? { turn: 'over', hung: so.hung, lead: lead() } : { turn: 'nothing' };
}

/** How loud the maker's speech is at least, as it comes in. */
function faintestOf(
  { loudest }: Going,
  { floor = -Infinity }: Frame,
  { keepsAboveFloor, belowLoudest }: Endpointing,
): number {
  return Math.min(floor + keepsAboveFloor, loudest - belowLoudest);
}

/** The frames before the first few that are loud together. */
function leadOf(loudness: readonly number[], faintest: number, run: number): number {
  const first = loudness.findIndex(
    (_, at) => at + run <= loudness.length && loudness.slice(at, at + run).every((each) => each > faintest),
  );
  return Math.max(0, first);
}

/** The mean power of the last so many frames, in dB. */
function smoothed(frames: number): (level: number) => number {
  let powers: number[] = [];
  return (level) => {
    powers = [...powers, 10 ** (level / 10)].slice(-frames);
    return decibels(powers.reduce((sum, power) => sum + power, 0) / powers.length);
  };
}
