import * as v from 'valibot';
import type { Celsius, Instant, Litres } from '../domain/unit';
import type { Gravity } from '../domain/gravity';
import { CHECKS } from '../procedure/check';
import { RUNGS } from '../procedure/facts';
import { JOINABLE } from '../procedure/joinable';
import { MISHAP_IDS } from '../procedure/mishap';
import { GATES } from '../procedure/phase';

const instant = v.pipe(
  v.number(),
  v.integer(),
  v.transform((value) => value as Instant),
);
const gravity = v.pipe(
  v.number(),
  v.integer(),
  v.minValue(9000),
  v.maxValue(13000),
  v.transform((value) => value as Gravity),
);
const celsius = v.pipe(
  v.number(),
  v.minValue(0),
  v.maxValue(40),
  v.transform((value) => value as Celsius),
);
const litres = v.pipe(
  v.number(),
  v.minValue(0),
  v.maxValue(100),
  v.transform((value) => value as Litres),
);
const count = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(500));
const entry = v.pipe(v.number(), v.integer(), v.minValue(1));
const words = v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(500));
const act = v.pipe(v.string(), v.minLength(1), v.maxLength(120));
const asked = { act };

/** How an event came: what was pressed, said, or ran out. */
const WAYS = ['touch', 'key', 'voice', 'timer', 'import'] as const;

/** When an event was accepted, on whose wall clock, and how it came. `takenAt` where it tells of something earlier. */
const stamp = {
  at: instant,
  offsetMinutes: v.pipe(v.number(), v.integer(), v.minValue(-900), v.maxValue(900)),
  how: v.picklist(WAYS),
  takenAt: v.optional(instant),
};

const event = <Type extends string, Entries extends v.ObjectEntries>(type: Type, entries: Entries) =>
  v.strictObject({ type: v.literal(type), ...stamp, ...entries });

/**
 * What the maker did, and when. Guards read `at`, never a clock, so that a journal replays exactly. An event that
 * answers an act names it, so that "done" heard twice counts once.
 */
export const batchEvent = v.variant('type', [
  event('act done', asked),
  event('sachets accounted', { ...asked, missing: v.pipe(v.array(words), v.maxLength(20)) }),
  event('instrument checked', {
    /** Without an act where the one before is gone. */
    act: v.optional(act),
    division: v.picklist([10, 20]),
    calibratedAt: v.picklist([20, 15.56]),
    waterReading: gravity,
    waterCelsius: celsius,
  }),
  event('litres measured', { ...asked, litres }),
  event('bottles counted', { ...asked, bottles: count, closures: count, threaded: v.boolean() }),
  event('filled counted', { ...asked, filled: count }),
  event('temperature taken', { ...asked, celsius }),
  event('reading taken', {
    act: v.optional(act),
    reading: gravity,
    sampleCelsius: celsius,
    wineCelsius: celsius,
    degassed: v.boolean(),
    /** Whether the sample went back, from a sanitised jar. */
    returned: v.boolean(),
    /** The maker was asked whether it is right, and said so. */
    confirmed: v.optional(v.boolean()),
  }),
  event('judged', {
    act: v.optional(act),
    what: v.picklist(['foam', 'rush', 'gas', 'clear', 'closures']),
    yes: v.boolean(),
  }),
  event('clock started', asked),
  event('clock paused', asked),
  event('clock resumed', asked),
  event('clock extended', {
    ...asked,
    seconds: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(3600)),
  }),
  event('gate passed', {
    gate: v.picklist(GATES),
    rules: v.pipe(v.number(), v.integer(), v.minValue(1)),
    readings: v.array(entry),
  }),
  event('sent back', { gate: v.picklist(GATES), clause: words }),
  event('gap measured', { ...asked, millimetres: v.pipe(v.number(), v.minValue(0), v.maxValue(500)) }),
  event('sugar tested', { gramsPerLitre: v.pipe(v.number(), v.minValue(0), v.maxValue(300)) }),
  event('overridden', { question: v.picklist([...GATES, ...CHECKS]), clause: words, reason: words }),
  event('left out', { sachet: words, reason: words }),
  event('helped', { rung: v.picklist(RUNGS) }),
  event('away planned', { from: instant, until: instant }),
  event('reading struck', { entry, reason: words }),
  event('mishap told', {
    mishap: v.picklist(MISHAP_IDS),
    sachet: v.optional(act),
    litres: v.optional(litres),
  }),
  event('mishap struck', { entry, reason: words }),
  event('looked again', { entry, well: v.boolean() }),
  event('wrappers counted', { empty: v.pipe(v.array(act), v.maxLength(20)) }),
  event('joined', {
    since: instant,
    reached: v.picklist(JOINABLE),
    added: v.pipe(v.array(v.strictObject({ sachet: act, at: v.optional(instant) })), v.maxLength(20)),
    notIn: v.pipe(v.array(act), v.maxLength(20)),
    litres: v.optional(litres),
    filled: v.optional(count),
  }),
  event('noted', { text: words }),
  event('ended', { end: v.picklist(['kept unbottled', 'discarded', 'left the guide']), reason: words }),
]);

export type BatchEvent = v.InferOutput<typeof batchEvent>;
export type EventType = BatchEvent['type'];
export type EventOf<Type extends EventType> = Extract<BatchEvent, { type: Type }>;

/** What the maker reports, before the queue stamps it. */
export type Report = BatchEvent extends infer Each
  ? Each extends BatchEvent
    ? Omit<Each, 'at' | 'offsetMinutes'>
    : never
  : never;

export const EVENT_TYPES = batchEvent.options.map((option) => option.entries.type.literal);
