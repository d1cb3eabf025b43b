import type { Division, Gravity } from '../../domain/gravity';

/**
 * The stem of a hydrometer, drawn around the line of the surface. A float sinks until it pushes aside its own weight, so on
 * a stem of even width the length from one gravity to another goes with the difference of their reciprocals: lines stand a
 * little farther apart where the numbers are low, and numbers grow downwards. That is how it is drawn, for a stem on which
 * a thousandth beside water takes `perThousandth` units: not for any one instrument.
 */
export type Stem = {
  /** How far below the surface a gravity's line stands, in drawing units; above it is below zero. */
  y: (gravity: Gravity) => number;
  lines: { gravity: Gravity; y: number; size: 'long' | 'middle' | 'short' }[];
};

type StemInput = {
  /** The gravity at the surface. */
  at: Gravity;
  division: Division;
  /** Units for one thousandth, near the surface of water. */
  perThousandth: number;
  /** Units of stem that are drawn above and below the surface. */
  above: number;
  below: number;
};

const WATER = 10_000;
/** Lines nearer than this run into one another: then every second or every fifth only. */
const NEAREST = 4.4;
const NUMBERED: Record<Division, number> = { 10: 50, 20: 100 };
const ROOM_FOR_NUMBER = 22;

/** The lines of a stem that floats at a gravity. Numbered ones are long, halves between two numbers are of middle length. */
export function stemAt({ at, division, perThousandth, above, below }: StemInput): Stem {
  const y = (gravity: Gravity): number => perThousandth * 1000 * (WATER / at - WATER / gravity);
  const unit = perThousandth / 10;
  const step = [1, 2, 5, 10].map((times) => times * division).find((each) => each * unit >= NEAREST) ?? 100;
  const numbered =
    [NUMBERED[division], 100, 200, 500].find((each) => each % step === 0 && each * unit >= ROOM_FOR_NUMBER) ??
    500;
  const first = Math.ceil(gravityAt(-above, at, perThousandth) / step) * step;
  const last = gravityAt(below, at, perThousandth);
  const count = Math.floor((last - first) / step) + 1;
  const lines = Array.from({ length: Math.max(0, count) }, (_, n) => (first + n * step) as Gravity);
  return {
    y,
    lines: lines.map((gravity) => ({
      gravity,
      y: y(gravity),
      size: gravity % numbered === 0 ? 'long' : gravity % (numbered / 2) === 0 ? 'middle' : 'short',
    })),
  };
}

/** The gravity whose line stands at a height of the drawing. */
export const gravityAt = (y: number, at: Gravity, perThousandth: number): number =>
  WATER / (WATER / at - y / (perThousandth * 1000));

const ROOM_THOUSANDTHS = 6;
const NEAREST_LOOK = 6;

/** How large a thousandth can be drawn, so that everything to be shown fits above and below the surface. */
export function lookClose(at: Gravity, shown: readonly Gravity[], above: number, below: number): number {
  const up = Math.max(0, ...shown.map((gravity) => at - gravity)) / 10 + ROOM_THOUSANDTHS;
  const down = Math.max(0, ...shown.map((gravity) => gravity - at)) / 10 + ROOM_THOUSANDTHS;
  return Math.min(NEAREST_LOOK, above / up, below / down);
}
