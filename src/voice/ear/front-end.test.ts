import { expect, test } from 'vitest';
import { FRAME, type Denoiser } from './denoiser';
import { frontEnd } from './front-end';

/** Leaves the sound as it is, and gives it a frame late, as the real one does. */
function late(): Denoiser {
  let before = new Float32Array(FRAME);
  return {
    clean(frame, to) {
      to.set(before);
      before = frame.slice();
      return 0.5;
    },
  };
}

const tone = Float32Array.from(
  { length: 48_000 },
  (_, at) => 0.5 * Math.sin((2 * Math.PI * 250 * at) / 48_000),
);
const soundOf = (wet: number) => {
  const front = frontEnd(48_000, late(), wet);
  return [...front.frames(tone)].flatMap(({ sound }) => [...sound]);
};

test('the sound with its noise and that without are laid one upon the other, not beside', () => {
  const clean = soundOf(1);
  const apart = soundOf(0.5).map((sample, at) => Math.abs(sample - (clean[at] ?? 0)));
  expect(Math.max(...apart)).toBeLessThan(1e-6);
});

test('a hundredth of a second comes at a time, 160 samples to decode', () => {
  const frames = [...frontEnd(48_000, late(), 1).frames(tone)];
  expect(frames).toHaveLength(100);
  expect(new Set(frames.map(({ sound }) => sound.length))).toEqual(new Set([160]));
  expect(frames.at(-1)?.power).toBeCloseTo(0.125, 3);
  expect(frames.at(-1)?.cleanLevel).toBeCloseTo(-9.03, 1);
});

test('a frame half filled is forgotten', () => {
  const front = frontEnd(48_000, late(), 1);
  expect([...front.frames(tone.slice(0, FRAME - 1))]).toEqual([]);
  front.drop();
  expect([...front.frames(tone.slice(0, FRAME - 1))]).toEqual([]);
});
