import { decibels } from './decibels';
import { noiseFloor } from './noise-floor';

/** How it sounds where the phone stands, in dB below full scale; what the microphone's own gain does is in it. */
export type Room = {
  /** How loud it was just now. */
  level: number;
  /** The noise that is always there. */
  noise: number;
  /** How far speech stands out of it: that heard last, or before any was heard what a voice near the phone has. */
  snr: number;
  /** Words are often missed or mistaken now: point to the keys. */
  unreliable: boolean;
};

/** Where a voice an arm's length away lies, with the microphone's own gain. */
const A_VOICE_NEAR = -30;
/** Below this a command in six was missed in trials. */
const LEAST_SNR = 12;
const REMEMBERED = 0.6;

export type RoomMeter = {
  /** A frame as it came in, and whether it is speech. Gives the noise that is always there, in dB. */
  next: (power: number, isSpeech: boolean) => number | undefined;
  /** An utterance is over: how far it stood out of the noise, in dB. */
  spoken: () => number;
  /** What was taken for speech was none, or is not to be counted. */
  forget: () => void;
  room: () => Room;
};

export function roomMeter(): RoomMeter {
  const floor = noiseFloor();
  const sound = mean();
  const speech = mean();
  let voice: number | undefined;
  const noise = () => decibels(floor.power() ?? 0);
  return {
    next(power, isSpeech) {
      floor.next(power);
      sound.add(power);
      if (isSpeech) speech.add(power);
      const always = floor.power();
      return always === undefined ? undefined : decibels(always);
    },
    spoken() {
      const level = decibels(speech.take() - (floor.power() ?? 0));
      voice = voice === undefined ? level : REMEMBERED * voice + (1 - REMEMBERED) * level;
      return level - noise();
    },
    forget: () => void speech.take(),
    room() {
      const snr = (voice ?? A_VOICE_NEAR) - noise();
      return { level: decibels(sound.take()), noise: noise(), snr, unreliable: snr < LEAST_SNR };
    },
  };
}

/** The mean of what was added since it was last taken. */
function mean() {
  let sum = 0;
  let count = 0;
  return {
    add(value: number) {
      sum += value;
      count += 1;
    },
    take(): number {
      const taken = count > 0 ? sum / count : 0;
      sum = count = 0;
      return taken;
    },
  };
}
