import { parseGravity, relativeDensity } from '../../domain/gravity';
import { parseWithin, type Counting } from '../../domain/parse-within';
import type { Preferences } from '../../domain/preferences';
import { accepted } from '../../domain/result';
import { onScale, parseTemperature } from '../../domain/temperature';
import type { Celsius, Litres } from '../../domain/unit';
import { inUnit, parseVolume } from '../../domain/volume';
import { Asked } from './asked.svelte';

const plain = (value: number | undefined, decimals: number): string =>
  value === undefined ? '' : String(Number(value.toFixed(decimals)));

/** A volume in the maker's unit, within limits in litres; what is known of it already stands there. */
export const askedLitres = ({ volume }: Preferences, least: number, most: number, known?: number) =>
  new Asked(
    (given) => parseVolume(given, volume, least as Litres, most as Litres),
    plain(known === undefined ? undefined : inUnit(known as Litres, volume), 2),
  );

/** A warmth on the maker's scale. */
export const askedCelsius = ({ temperature }: Preferences, least: number, most: number, known?: number) =>
  new Asked(
    (given) => parseTemperature(given, temperature, least as Celsius, most as Celsius),
    plain(known === undefined ? undefined : onScale(known as Celsius, temperature), 1),
  );

/** A gravity as any hydrometer shows it, as the plain decimal that the sums work with. */
export const askedGravity = (known?: number) =>
  new Asked(
    (given) => {
      const read = parseGravity(given);
      return read.ok ? accepted(relativeDensity(read.value)) : read;
    },
    known === undefined ? '' : known.toFixed(4).replace(/0$/, ''),
  );

/** A number that has no parser of its own, within limits. */
export const askedNumber = (counting: Counting, least: number, most: number, known?: number) =>
  new Asked((given) => parseWithin(given, counting, least, most), plain(known, 1));
