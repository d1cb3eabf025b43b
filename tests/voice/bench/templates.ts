import { DECODED_RATE, type Hearing } from '../../../src/voice/ear/decoder';
import type { PocketSphinx } from '../../../src/voice/ear/pocketsphinx';
import { spanOf } from '../../../src/voice/ear/spans';

/** A phrase as one speaker says it: a row of numbers each hundredth of a second, loudness left out, its mean taken away. */
export type Template = readonly Float32Array[];

const FRAMES_A_SECOND = 100;

/** The words of a hearing as a template. */
export function templateOf(
  { features }: PocketSphinx,
  samples: Int16Array,
  { segments }: Hearing,
): Template | undefined {
  const span = spanOf(segments);
  if (!span) return undefined;
  const [from, to] = [span.from, span.to].map((at) => Math.round(at * DECODED_RATE));
  const rows = features(samples.slice(from, to)).map((row) => row.subarray(1));
  const size = rows[0]?.length ?? 0;
  if (rows.length < FRAMES_A_SECOND / 5) return undefined;
  const mean = Float32Array.from(
    { length: size },
    (_, at) => rows.reduce((sum, row) => sum + (row[at] ?? 0), 0) / rows.length,
  );
  return rows.map((row) => row.map((value, at) => value - (mean[at] ?? 0)));
}

const apart = (one: Float32Array, other: Float32Array): number => {
  let sum = 0;
  for (let at = 0; at < one.length; at++) sum += ((one[at] ?? 0) - (other[at] ?? 0)) ** 2;
  return Math.sqrt(sum);
};

/** How far two templates lie apart when time is stretched so that they fit best (dynamic time warping), a step. */
export function distance(one: Template, other: Template): number {
  let before = new Float32Array(other.length + 1).fill(Infinity);
  before[0] = 0;
  for (const row of one) {
    const now = new Float32Array(other.length + 1).fill(Infinity);
    other.forEach((column, at) => {
      const cost = apart(row, column);
      now[at + 1] = Math.min(
        (before[at] ?? Infinity) + 2 * cost,
        (before[at + 1] ?? Infinity) + cost,
        (now[at] ?? Infinity) + cost,
      );
    });
    before = now;
  }
  return (before[other.length] ?? Infinity) / (one.length + other.length);
}
