import { relativeDensity, type Gravity } from '../domain/gravity';
import type { Preferences } from '../domain/preferences';
import { onScale } from '../domain/temperature';
import type { Celsius, Instant, Litres } from '../domain/unit';
import { inUnit, type VolumeUnit } from '../domain/volume';
import { units as english } from './en/units';

/** Numbers as this maker reads them: their units, their language, their clock. Every quantity comes with its unit. */
export type Formats = {
  /** The units in which this maker reads and is asked. */
  units: Pick<Preferences, 'volume' | 'temperature'>;
  /** "0.994"; a fourth decimal only where it is not a whole thousandth. */
  gravity: (gravity: Gravity) => string;
  /** A gravity digit by digit, to be read back: "zero point nine nine four". */
  spokenGravity: (gravity: Gravity) => string;
  celsius: (celsius: Celsius) => string;
  /** "21 degrees Celsius". */
  spokenCelsius: (celsius: Celsius) => string;
  litres: (litres: Litres) => string;
  grams: (grams: number) => string;
  millimetres: (millimetres: number) => string;
  bar: (bar: number) => string;
  count: (count: number) => string;
  /** A bare number with at most so many decimals; its unit is the sentence's to say. */
  number: (value: number, decimals: number) => string;
  duration: (seconds: number) => string;
  hours: (hours: number) => string;
  days: (days: number) => string;
  dayNumber: (day: number) => string;
  date: (instant: Instant) => string;
  dateTime: (instant: Instant) => string;
  dayAndTime: (instant: Instant) => string;
  list: (items: readonly string[]) => string;
};

/** `timeZone` is an IANA name; the device's own where it is left out. */
export type FormatsInput = {
  preferences: Formats['units'];
  language: string;
  timeZone?: string;
};

type UnitWords = typeof english;

const UNIT_WORDS: Partial<Record<string, UnitWords>> = { en: english };

/** How this maker's numbers, volumes and moments are written. */
export function formatsFor({ preferences, language, timeZone }: FormatsInput): Formats {
  const words = UNIT_WORDS[language.split('-')[0] ?? ''] ?? english;
  const locale = language === 'en' ? 'en-GB' : language;
  return {
    units: { volume: preferences.volume, temperature: preferences.temperature },
    ...quantities(locale, words, preferences),
    ...spans(locale, words),
    ...moments(locale, words, timeZone),
  };
}

function quantities(locale: string, words: UnitWords, { volume, temperature }: FormatsInput['preferences']) {
  const plain = numbers(locale);
  const tenths = plain({ maximumFractionDigits: 1 });
  const degrees = (celsius: Celsius): string => tenths(onScale(celsius, temperature));
  const density = plain({ minimumFractionDigits: 3, maximumFractionDigits: 4 });
  const gravity = (value: Gravity): string => density(relativeDensity(value));
  return {
    gravity,
    spokenGravity: (value: Gravity) => spelled(gravity(value), words),
    celsius: (celsius: Celsius) => `${degrees(celsius)} ${temperature}`,
    spokenCelsius: (celsius: Celsius) => `${degrees(celsius)} ${words.degrees[temperature]}`,
    litres: volumes(locale, words, volume),
    grams: plain({ ...long('gram'), maximumFractionDigits: 1 }),
    millimetres: plain({ ...long('millimeter'), maximumFractionDigits: 0 }),
    bar: (bar: number) => `${tenths(bar < TELLING_BAR ? bar : Math.round(bar))} bar`,
    count: plain({ maximumFractionDigits: 0 }),
    number: (value: number, maximumFractionDigits: number) => plain({ maximumFractionDigits })(value),
  };
}

/** Pressures above this are told in whole bar: the sum is good to a twentieth at best. */
const TELLING_BAR = 2;

/** One decimal, and two where the first alone would say little: below one of the unit. */
function volumes(locale: string, { volume: names }: UnitWords, unit: VolumeUnit): (litres: Litres) => string {
  const [small, large] = [2, 1].map((maximumFractionDigits) => {
    const number = numbers(locale)({ maximumFractionDigits });
    const plural = new Intl.PluralRules(locale, { maximumFractionDigits });
    return (value: number) =>
      `${number(value)} ${plural.select(value) === 'one' ? names[unit].one : names[unit].other}`;
  }) as [(value: number) => string, (value: number) => string];
  return (litres) => {
    const value = inUnit(litres, unit);
    return Math.abs(value) < 1 ? small(value) : large(value);
  };
}

/** A way to write numbers of one kind, made once and used often. */
const numbers =
  (locale: string) =>
  (options: Intl.NumberFormatOptions): ((value: number) => string) => {
    const format = new Intl.NumberFormat(locale, options);
    return (value) => format.format(value);
  };

const long = (unit: string): Intl.NumberFormatOptions => ({ style: 'unit', unit, unitDisplay: 'long' });

const spelled = (number: string, { digits, point }: UnitWords): string =>
  [...number].map((character) => digits[Number(character)] ?? point).join(' ');

const LARGEST_FIRST = [
  ['day', 86_400],
  ['hour', 3600],
  ['minute', 60],
  ['second', 1],
] as const;
type SpanUnit = (typeof LARGEST_FIRST)[number][0];

function spans(locale: string, words: UnitWords) {
  const plain = numbers(locale);
  const units = new Map(
    LARGEST_FIRST.map(([name]) => [name, plain({ ...long(name), maximumFractionDigits: 0 })]),
  );
  const unit = (value: number, name: SpanUnit): string => units.get(name)?.(value) ?? '';
  const conjunction = new Intl.ListFormat(locale, { type: 'conjunction' });
  const list = (items: readonly string[]): string => conjunction.format(items);
  return {
    list,
    hours: plain({ ...long('hour'), maximumFractionDigits: 1 }),
    days: (days: number) => unit(days, 'day'),
    dayNumber: (day: number) => words.dayNumber(String(day)),
    duration: (seconds: number) => list(parts(seconds).map(([name, value]) => unit(value, name))),
  };
}

/** The two largest parts of a span: minutes and seconds, hours and minutes, days and hours. Nothing left is 0 seconds. */
function parts(seconds: number): [SpanUnit, number][] {
  const whole = Math.max(0, Math.round(seconds));
  const found = LARGEST_FIRST.findIndex(([, size]) => whole >= size);
  const pair = LARGEST_FIRST.slice(found < 0 ? -1 : found).slice(0, 2);
  const [large, small] = pair;
  if (!large || !small) return [['second', whole]];
  const rest = Math.floor((whole % large[1]) / small[1]);
  return [
    [large[0], Math.floor(whole / large[1])],
    ...(rest > 0 ? [[small[0], rest] as [SpanUnit, number]] : []),
  ];
}

function moments(locale: string, words: UnitWords, timeZone: string | undefined) {
  const zone = timeZone === undefined ? {} : { timeZone };
  const written = (options: Intl.DateTimeFormatOptions): ((instant: Instant) => string) => {
    const format = new Intl.DateTimeFormat(locale, { ...options, ...zone });
    return (instant) => format.format(instant);
  };
  const day = written({ weekday: 'long', day: 'numeric', month: 'long' });
  const time = written({ timeStyle: 'short' });
  return {
    date: written({ dateStyle: 'long' }),
    dateTime: written({ dateStyle: 'long', timeStyle: 'short' }),
    dayAndTime: (instant: Instant) => words.about(day(instant), time(instant)),
  };
}
