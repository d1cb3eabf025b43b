import type { SoundPreferences } from '../domain/sound-preferences';
import { TONES, type Tones } from './tones';

/** Seconds over which a tone swells and fades, so that it does not click. */
const EDGE = 0.012;

/** Tones through one gain. `wake` belongs inside the first tap; before it nothing sounds. */
export type WebTones = Tones & { wake: () => void; close: () => void };

export function webTones(preferences: () => SoundPreferences): WebTones {
  let context: AudioContext | undefined;
  let master: GainNode | undefined;
  return {
    wake() {
      context ??= new AudioContext();
      if (!master) {
        master = context.createGain();
        master.connect(context.destination);
      }
      void context.resume().catch(() => undefined);
    },
    play(tone) {
      const { muted, volume } = preferences();
      if (!context || !master || muted) return;
      // A device that was asleep, or took a call, suspends the context by itself.
      if (context.state !== 'running') void context.resume().catch(() => undefined);
      master.gain.value = volume;
      const { hertz, rhythm } = TONES[tone];
      let at = context.currentTime + EDGE;
      for (const [index, milliseconds] of rhythm.entries()) {
        if (index % 2 === 0) beep(context, master, hertz, at, milliseconds / 1000);
        at += milliseconds / 1000;
      }
    },
    close() {
      void context?.close().catch(() => undefined);
      context = undefined;
      master = undefined;
    },
  };
}

function beep(context: AudioContext, into: GainNode, hertz: number, at: number, seconds: number): void {
  const source = new OscillatorNode(context, { type: 'triangle', frequency: hertz });
  const swell = new GainNode(context, { gain: 0 });
  swell.gain.setValueAtTime(0, at);
  swell.gain.linearRampToValueAtTime(0.6, at + EDGE);
  swell.gain.setValueAtTime(0.6, at + seconds - EDGE);
  swell.gain.linearRampToValueAtTime(0, at + seconds);
  source.connect(swell).connect(into);
  source.start(at);
  source.stop(at + seconds);
}
