import { onScale, type TemperatureScale } from '../../domain/temperature';
import type { Celsius } from '../../domain/unit';

/** What a drawn thermometer shows, from the coldest line to the warmest: must, wine and rooms lie within. */
const COLDEST = 5;
const WARMEST = 35;
const LONG: Record<TemperatureScale, number> = { '°C': 5, '°F': 10 };

export type WarmthScale = {
  y: (celsius: Celsius) => number;
  lines: { y: number; label?: string }[];
};

/** A thermometer's scale from `bottom` up to `top`, with numbers in the maker's own degrees; what lies beyond stops at its end. */
export function warmthScale(scale: TemperatureScale, top: number, bottom: number): WarmthScale {
  const [low, high] = [COLDEST, WARMEST].map((celsius) => onScale(celsius as Celsius, scale)) as [
    number,
    number,
  ];
  const at = (degrees: number): number =>
    bottom - ((Math.min(high, Math.max(low, degrees)) - low) / (high - low)) * (bottom - top);
  const long = LONG[scale];
  const step = scale === '°C' ? 1 : 2;
  const first = Math.ceil(low / step) * step;
  const count = Math.floor((high - first) / step + 1e-9) + 1;
  return {
    y: (celsius) => at(onScale(celsius, scale)),
    lines: Array.from({ length: count }, (_, n) => first + n * step).map((degrees) => ({
      y: at(degrees),
      ...(degrees % long === 0 ? { label: String(degrees) } : {}),
    })),
  };
}
