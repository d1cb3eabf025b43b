import { decimal } from './decimal';
import { accepted, refused, type Result } from './result';
import type { Litres } from './unit';

/** The units a volume may be shown in. There are two gallons, so neither is ever just "a gallon". */
export type VolumeUnit = 'litres' | 'US gallons' | 'imperial gallons';

/** Litres in one of each unit: the US gallon of 231 cubic inches, the imperial gallon of 4.54609 L, both by definition. */
const LITRES_IN: Record<VolumeUnit, number> = {
  litres: 1,
  'US gallons': 3.785411784,
  'imperial gallons': 4.54609,
};

/** Litres as the number that the maker's unit shows, unrounded. */
export const inUnit = (litres: Litres, unit: VolumeUnit): number => litres / LITRES_IN[unit];

/** A volume as typed in the maker's unit, within the limits that make sense where it is asked (in litres). */
export function parseVolume(
  given: string,
  unit: VolumeUnit,
  lowest: Litres,
  highest: Litres,
): Result<Litres> {
  const value = (decimal(given) * LITRES_IN[unit]) as Litres;
  return value >= lowest && value <= highest
    ? accepted(value)
    : refused({ code: 'volume-misread', given, unit, lowest, highest });
}
