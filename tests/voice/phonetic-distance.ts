/** A row of sounds, named as the pronouncing dictionary names them (ARPAbet, without stress). */
export type Sounds = readonly string[];

/** Sounds that noise or an accent turns into one another: half a sound apart. */
const ALIKE: readonly Sounds[] = [
  ['P', 'T', 'K'],
  ['B', 'D', 'G'],
  ['P', 'B'],
  ['T', 'D'],
  ['K', 'G'],
  ['F', 'V'],
  ['TH', 'DH', 'F', 'V'],
  ['S', 'Z', 'SH', 'ZH'],
  ['CH', 'JH', 'SH'],
  ['M', 'N', 'NG'],
  ['L', 'R', 'W'],
  ['IY', 'IH', 'EY', 'Y'],
  ['EH', 'AE', 'AH', 'ER'],
  ['IH', 'EH', 'AH'],
  ['AA', 'AO', 'AH', 'OW'],
  ['UH', 'UW', 'AH', 'W'],
  ['AY', 'AW', 'AA', 'AH'],
  ['OY', 'OW', 'AO'],
];
const HALF = 0.5;

const apart = (one: string, other: string): number => {
  if (one === other) return 0;
  return ALIKE.some((alike) => alike.includes(one) && alike.includes(other)) ? HALF : 1;
};

/** How many sounds must be put in, left out or changed to make one row of the other; alike ones count half. */
export function phoneticDistance(one: Sounds, other: Sounds): number {
  let row = Array.from({ length: other.length + 1 }, (_, nth) => nth);
  for (const [done, sound] of one.entries()) {
    const next = [done + 1];
    for (const [nth, against] of other.entries())
      next.push(
        Math.min((row[nth] ?? 0) + apart(sound, against), (row[nth + 1] ?? 0) + 1, (next[nth] ?? 0) + 1),
      );
    row = next;
  }
  return row.at(-1) ?? 0;
}

/** How many sounds two rows share at their ends. */
export function sharedTail(one: Sounds, other: Sounds): number {
  let shared = 0;
  while (shared < Math.min(one.length, other.length) && one.at(-1 - shared) === other.at(-1 - shared))
    shared += 1;
  return shared;
}

const VOWEL = /^[AEIOU]/;
export const syllables = (sounds: Sounds): number => sounds.filter((sound) => VOWEL.test(sound)).length;
