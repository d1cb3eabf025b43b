/** What a tone says. */
export type Tone = 'ready' | 'warn' | 'time up' | 'heard' | 'not heard';

/** Plays tones and makes no others: sound, or the same rhythm felt in the hand. */
export type Tones = { play: (tone: Tone) => void };

/** Low, because water and ageing ears take the high ones; told apart by rhythm. Milliseconds of sound, silence, sound … */
export const TONES: Record<Tone, { hertz: number; rhythm: readonly number[] }> = {
  ready: { hertz: 330, rhythm: [120, 80, 240] },
  warn: { hertz: 196, rhythm: [500, 120, 500, 120, 500] },
  'time up': { hertz: 294, rhythm: [150, 90, 150, 90, 150, 350, 150, 90, 150, 90, 150] },
  heard: { hertz: 330, rhythm: [90] },
  'not heard': { hertz: 220, rhythm: [200, 60, 80] },
};
