import { TONES, type Tones } from './tones';

/** The tones' rhythms felt in the hand, where the device can: some have no motor, or no way to it. */
export const vibration: Tones = {
  play(tone) {
    if (!('vibrate' in navigator)) return;
    if (tone === 'warn' || tone === 'time up') navigator.vibrate([...TONES[tone].rhythm]);
  },
};
