import { parseGravity, relativeDensity, type Gravity } from '../domain/gravity';
import { parseCount, MOST_COUNTED } from '../domain/parse-count';
import type { Result } from '../domain/result';
import { HIGHEST_CELSIUS, onScale, parseTemperature } from '../domain/temperature';
import type { Celsius } from '../domain/unit';
import { inUnit, parseVolume } from '../domain/volume';
import { litresAsked, type LitresOf } from '../procedure/litres-asked';
import type { Formats } from '../text/formats';
import type { NumberAsked } from '../voice/number-grammar';
import type { NumberField } from './dictation';
import type { Situation } from './situation';

/** A number as it is asked where the guide stands: what can be heard, and the door that it comes in by. */
type Asking = NumberAsked & { parse: (given: string) => Result<number> };

type Units = Formats['units'];

type Range = { lowest: Gravity; highest: Gravity };

/** A hydrometer in plain water. Others can be typed. */
const IN_WATER = { lowest: 9900, highest: 10_100 } as Range;

const gravity = ({ lowest, highest }: Range): Asking => ({
  kind: 'gravity',
  lowest: relativeDensity(lowest),
  highest: relativeDensity(highest),
  parse: parseGravity,
});

/** Colder than any wine at work. Heard only by half, "twenty" is two: what is colder still is typed. */
const COLDEST_HEARD = 10 as Celsius;

const temperature = (_: Situation, { temperature: scale }: Units): Asking => ({
  kind: 'temperature',
  lowest: onScale(COLDEST_HEARD, scale),
  highest: onScale(HIGHEST_CELSIUS, scale),
  parse: (given) => parseTemperature(given, scale),
});
const count = (): Asking => ({ kind: 'count', lowest: 0, highest: MOST_COUNTED, parse: parseCount });

function litres({ now }: Situation, { volume: unit }: Units): Asking {
  const of: LitresOf = now?.act.kind === 'litres' ? now.act.of : 'wine';
  const { lowest, highest } = litresAsked(of);
  return {
    kind: unit === 'litres' ? 'litres' : 'gallons',
    lowest: inUnit(lowest, unit),
    highest: inUnit(highest, unit),
    parse: (given) => parseVolume(given, unit, lowest, highest),
  };
}

const ASKED: Record<NumberField, (situation: Situation, units: Units) => Asking> = {
  reading: ({ plausible }) => gravity(plausible),
  waterReading: () => gravity(IN_WATER),
  sampleCelsius: temperature,
  wineCelsius: temperature,
  celsius: temperature,
  waterCelsius: temperature,
  litres,
  millimetres: count,
  bottles: count,
  closures: count,
  filled: count,
};

export const numberAsked = (field: NumberField, situation: Situation, units: Units): Asking =>
  ASKED[field](situation, units);
