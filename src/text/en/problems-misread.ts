import type { Gravity } from '../../domain/gravity';
import type { Counting } from '../../domain/parse-within';
import type { Celsius } from '../../domain/unit';
import type { Sentences } from '../sentences';
import { quoted } from './counted';

const countings: Record<Counting, (number: string) => string> = {
  pH: (number) => `a pH of ${number}`,
  percent: (number) => `${number} %`,
  grams: (number) => `${number} grams`,
  'milligrams per litre': (number) => `${number} mg/L`,
  millimetres: (number) => `${number} mm`,
  brix: (number) => `${number} °Brix`,
  gravity: (number) => `a gravity of ${number}`,
};

/** What was typed and cannot be used, or is asked about before it counts. */
export const misread = {
  'gravity-misread': ({ given, lowest, highest }, f) =>
    `${quoted(given)} is not a reading between ${f.gravity(lowest)} and ${f.gravity(highest)}. Look again at eye level, and give it as 996 or 0.996.`,
  'temperature-misread': ({ given, lowest, highest }, f) =>
    `${quoted(given)} is not a temperature between ${f.celsius(lowest)} and ${f.celsius(highest)}. Look at the thermometer again, and check which scale is set.`,
  'volume-misread': ({ given, lowest, highest }, f) =>
    `${quoted(given)} is not between ${f.litres(lowest)} and ${f.litres(highest)}. Measure again, and check which unit is set.`,
  'count-misread': ({ given, highest }, f) =>
    `${quoted(given)} is not a whole number up to ${f.count(highest)}. Count again, and type it in figures.`,
  'number-misread': ({ given, counting, lowest, highest }, f) =>
    `${quoted(given)} is not between ${countings[counting](f.number(lowest, 3))} and ${countings[counting](f.number(highest, 3))}. Look again, and type it in figures.`,
  'time-misread': ({ given }) =>
    `${quoted(given)} is not a date and time. Choose the day and the hour again.`,
  'in-the-future': ({ takenAt }, f) =>
    `${f.dateTime(takenAt)} has not come yet. Check the date, and the clock of this device.`,
  'before-the-batch': ({ takenAt, begun }, f) =>
    `${f.dateTime(takenAt)} is before this batch began, on ${f.dateTime(begun)}. Check the date and give it again.`,
  'sample-out-of-reach': ({ gravity, celsius }, f) =>
    `A reading of ${f.gravity(gravity)} in a sample at ${f.celsius(celsius)} cannot be corrected. Bring the sample near ${f.celsius(20 as Celsius)} and read again.`,
  'water-misread': ({ gravity, celsius }, f) =>
    `In water at ${f.celsius(celsius)} the hydrometer showed ${f.gravity(gravity)}; a sound one is off by ${f.gravity(50 as Gravity)} at most. Check that jar and water are clean and plain, spin it, and read again. If it shows the same, use another one.`,

  'reading-jumped': ({ by, hours }, f) =>
    `The gravity fell by ${f.gravity(by)} ${hours < 1 ? 'within the hour' : `in ${f.duration(hours * 3600)}`}. In the wild first days that can be so; at other times a line was misread, or the temperature is wrong. Look again at eye level, and say so if it is right.`,
  'reading-went-up': ({ by }, f) =>
    `The gravity rose by ${f.gravity(by)}. Fermenting never does that; gas in the sample, a wrong temperature, a misread line or added water does. Shake the gas out and read again, and say so if it is right.`,
} satisfies Partial<Sentences>;
