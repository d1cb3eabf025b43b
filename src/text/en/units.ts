import type { TemperatureScale } from '../../domain/temperature';
import type { VolumeUnit } from '../../domain/volume';

/** One thing and several: "1 litre", "23 litres". */
type Counted = { one: string; other: string };

const volume: Record<VolumeUnit, Counted> = {
  litres: { one: 'litre', other: 'litres' },
  'US gallons': { one: 'US gallon', other: 'US gallons' },
  'imperial gallons': { one: 'imperial gallon', other: 'imperial gallons' },
};

const degrees: Record<TemperatureScale, string> = { '°C': 'degrees Celsius', '°F': 'degrees Fahrenheit' };

/** The words that numbers are said with. The gallon is never without its country: there are two. */
export const units = {
  volume,
  degrees,
  dayNumber: (day: string): string => `day ${day}`,
  about: (day: string, time: string): string => `${day}, about ${time}`,
  point: 'point',
  digits: ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'],
};
