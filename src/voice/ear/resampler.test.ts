import { describe, expect, test } from 'vitest';
import { decibels, powerOf } from './decibels';
import { resampler } from './resampler';

const SECONDS = 0.5;
const tone = (hertz: number, rate: number) =>
  Float32Array.from({ length: rate * SECONDS }, (_, at) => Math.sin((2 * Math.PI * hertz * at) / rate));

function through(from: number, to: number, samples: Float32Array, chunk = 441) {
  const next = resampler(from, to);
  const out: number[] = [];
  for (let at = 0; at < samples.length; at += chunk) out.push(...next(samples.subarray(at, at + chunk)));
  return Float32Array.from(out);
}

/** How far what comes out lies from a tone of this pitch, in dB below the tone, whatever its phase. */
function impurity(samples: Float32Array, hertz: number, rate: number) {
  const settled = samples.subarray(rate / 20);
  const turn = (2 * Math.PI * hertz) / rate;
  const along = (wave: (angle: number) => number) =>
    settled.reduce((sum, sample, at) => sum + sample * wave(turn * at), 0) * (2 / settled.length);
  const [sine, cosine] = [along(Math.sin), along(Math.cos)];
  const rest = settled.map(
    (sample, at) => sample - sine * Math.sin(turn * at) - cosine * Math.cos(turn * at),
  );
  return decibels(powerOf(rest)) - decibels((sine ** 2 + cosine ** 2) / 2);
}

describe('a tone that both rates hold', () => {
  test.each([
    [48_000, 16_000, 300],
    [48_000, 16_000, 3000],
    [48_000, 16_000, 6800],
    [44_100, 48_000, 1000],
    [44_100, 48_000, 9000],
    [16_000, 48_000, 3000],
    [8000, 48_000, 2000],
    [96_000, 48_000, 9000],
  ])('goes from %i to %i unchanged: %i Hz', (from, to, hertz) => {
    const out = through(from, to, tone(hertz, from));
    expect(impurity(out, hertz, to)).toBeLessThan(-50);
    expect(decibels(powerOf(out.subarray(to / 20)))).toBeCloseTo(decibels(0.5), 1);
  });
});

describe('a tone that the lower rate cannot hold', () => {
  test.each([
    [48_000, 16_000, 8800],
    [48_000, 16_000, 12_000],
    [48_000, 16_000, 15_900],
    [96_000, 48_000, 30_000],
  ])('is taken away, not folded back: from %i to %i, %i Hz', (from, to, hertz) =>
    expect(decibels(powerOf(through(from, to, tone(hertz, from)).subarray(to / 20)))).toBeLessThan(-50),
  );
});

test.each([1, 7, 128, 4096])('comes out the same in chunks of %i', (chunk) => {
  const samples = tone(700, 44_100);
  expect(through(44_100, 48_000, samples, chunk)).toEqual(through(44_100, 48_000, samples, samples.length));
});

test.each([
  [48_000, 16_000],
  [44_100, 48_000],
])('gives as many samples as the rate asks for: from %i to %i', (from, to) => {
  const missing = to * SECONDS - through(from, to, tone(500, from)).length;
  expect(Math.abs(missing)).toBeLessThan(to / 100);
});
