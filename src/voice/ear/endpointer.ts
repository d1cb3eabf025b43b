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
  /** Speech that is fainter than its loudest by this much is over. */
  belowPeak: number;
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
  aboveFloor: 3,
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
  /** It may be over: if it is, it is over as it is now. */
  | { turn: 'pausing' }
  | { turn: 'over'; hung: number }
  | { turn: 'nothing' };

export type Endpointer = { next: (frame: Frame) => Turn; reset: () => void };

/** Finds where an utterance begins and ends. One that grows too long is ended, and none begins until it is quiet. */
export function endpointer(settings: Endpointing = ENDPOINTING): Endpointer {
  let lately: boolean[] = [];
  let going: { frames: number; spoken: number; hung: number; peak: number } | undefined;
  let waitsForQuiet = false;
  const reset = () => {
    lately = [];
    going = undefined;
    waitsForQuiet = false;
  };

  const begin = (frame: Frame): Turn => {
    const { sustained, of, startsAt, aboveFloor, faintest } = settings;
    const standsOut = frame.floor === undefined || frame.level > frame.floor + aboveFloor;
    lately = [...lately, frame.speech >= startsAt && standsOut && frame.cleanLevel > faintest].slice(-of);
    const spoken = lately.filter(Boolean).length;
    if (waitsForQuiet) waitsForQuiet = lately.length < of || spoken > 0;
    if (waitsForQuiet || spoken < sustained) return { turn: 'quiet' };
    const past = lately.length - lately.indexOf(true);
    going = { frames: past, spoken, hung: 0, peak: frame.cleanLevel };
    lately = [];
    return { turn: 'begun', past };
  };

  const goOn = (so: NonNullable<typeof going>, frame: Frame): Turn => {
    const { staysAt, belowPeak, hang, pause, longest, shortest } = settings;
    const isSpeech = frame.speech >= staysAt && frame.cleanLevel > so.peak - belowPeak;
    so.frames += 1;
    so.spoken += isSpeech ? 1 : 0;
    so.hung = isSpeech ? 0 : so.hung + 1;
    so.peak = Math.max(so.peak, frame.cleanLevel);
    const isLong = so.spoken >= shortest;
    if (so.hung < hang && so.frames < longest)
      return { turn: isLong && so.hung === pause ? 'pausing' : 'going on' };
    going = undefined;
    waitsForQuiet = so.frames >= longest;
    return isLong ? { turn: 'over', hung: so.hung } : { turn: 'nothing' };
  };

  return { reset, next: (frame) => (going ? goOn(going, frame) : begin(frame)) };
}
