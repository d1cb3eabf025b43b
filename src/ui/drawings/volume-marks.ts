import type { Litres } from '../../domain/unit';
import { inUnit, type VolumeUnit } from '../../domain/volume';

/** A line on a vessel's scale: where it stands in litres; its number in the maker's unit, where it carries one. */
export type VolumeMark = { litres: number; label?: string };

const LARGE: Record<VolumeUnit, number> = { litres: 5, 'US gallons': 1, 'imperial gallons': 1 };
const LARGE_BRIM = 8;
const SMALL_SHARE = 10;

/** Lines at round numbers of the maker's unit up to the brim: every second one is numbered, the others are short. */
export function volumeMarks(brim: number, unit: VolumeUnit): VolumeMark[] {
  const step = LARGE[unit] / (brim < LARGE_BRIM ? SMALL_SHARE : 1);
  const litres = step / inUnit(1 as Litres, unit);
  return Array.from({ length: Math.floor(brim / litres + 1e-9) }, (_, n) => ({
    litres: (n + 1) * litres,
    ...(n % 2 === 1 ? { label: String(Math.round((n + 1) * step * 10) / 10) } : {}),
  }));
}
