import * as v from 'valibot';
import { CONTENTS } from './contents';

/** The only format and version there is: an instructor's export, a built-in sheet and the sheet inside a batch are the same. */
export const SHEET_FORMAT = 'fallbright kit sheet';
export const SHEET_VERSION = 1;

const words = (longest: number) => v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(longest));
const between = (lowest: number, highest: number) =>
  v.pipe(v.number(), v.minValue(lowest), v.maxValue(highest));
const whole = (lowest: number, highest: number) => v.pipe(between(lowest, highest), v.integer());
const slug = v.pipe(v.string(), v.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/), v.maxLength(60));
const litres = between(3, 60);

/** What a sachet may say of itself, in the order in which a label tells it. */
export const ALLERGENS = ['sulphite', 'shellfish', 'fish', 'egg', 'milk'] as const;
export type Allergen = (typeof ALLERGENS)[number];

const sachet = v.strictObject({
  id: slug,
  /** The words printed on it: what the maker looks for, and what is read back. */
  printed: words(60),
  contents: v.pipe(v.array(v.picklist(CONTENTS)), v.minLength(1), v.maxLength(3)),
  count: whole(1, 6),
  /** Grams in each, only if they are printed. Unknown never blocks and never makes a claim. */
  grams: v.optional(between(0.1, 5000)),
  when: v.picklist(['mix', 'pitch', 'ferment', 'stabilise', 'fine', 'clear', 'bottle']),
  /** Its place among the sachets of the same phase. */
  order: whole(1, 20),
  dissolveFirst: v.boolean(),
  stirSeconds: whole(0, 900),
  /** Minutes to wait before whatever comes next. */
  gapMinutes: whole(0, 2880),
  allergen: v.optional(v.picklist(ALLERGENS)),
});

const move = v.variant('when', [
  v.strictObject({ when: v.literal('early'), atGravity: between(0.99, 1.04) }),
  v.strictObject({ when: v.literal('dry') }),
  v.strictObject({ when: v.literal('clear') }),
]);

/** The shape of a kit sheet, version 1: volumes in litres, temperatures in °C, relative densities as printed (1.062). */
export const kitSheetShape = v.strictObject({
  format: v.literal(SHEET_FORMAT),
  version: v.literal(SHEET_VERSION),
  id: slug,
  edition: words(40),
  language: v.pipe(v.string(), v.regex(/^[a-z]{2,3}(-[A-Z]{2})?$/)),
  name: words(60),
  /** Where each number comes from: a leaflet's page, or the instructor. Keys are paths such as "dry.limit". */
  sources: v.record(words(80), words(200)),
  wine: v.strictObject({
    style: words(60),
    colour: v.picklist(['red', 'rosé', 'white']),
    /** The accent's hue in degrees of OKLCH. */
    hue: between(0, 360),
  }),
  batchLitres: litres,
  firstWaterLitres: between(0.5, 40),
  start: v.strictObject({ lowest: between(1.02, 1.16), highest: between(1.02, 1.16) }),
  moves: v.pipe(v.array(move), v.maxLength(3)),
  /** What happens to the sediment before stabilising where the wine is not moved when dry. */
  sediment: v.picklist(['stir up', 'leave']),
  dry: v.strictObject({
    limit: v.optional(between(0.985, 1)),
    readings: whole(1, 6),
    hoursApart: whole(0, 336),
    minimumDays: whole(1, 90),
  }),
  temperature: v.strictObject({
    pitchLowest: between(10, 30),
    pitchHighest: between(15, 35),
    wineAtLeast: between(10, 26),
  }),
  sachets: v.pipe(v.array(sachet), v.minLength(1), v.maxLength(20)),
  /** Litres drawn off before stabilising, kept full, cool and airlocked, and returned before the baseline. */
  reserveLitres: v.optional(between(0.25, 5)),
  degas: v.strictObject({
    seconds: whole(30, 900),
    reverseSeconds: whole(10, 300),
    rounds: whole(1, 6),
    /** Whether the gas goes before the powders. */
    first: v.boolean(),
  }),
  finingAtLeast: between(8, 26),
  clearingDays: whole(1, 180),
  stopperMillimetres: whole(5, 80),
  bottle: v.strictObject({
    millilitres: between(187, 3000),
    closure: v.picklist(['cork', 'screw cap', 'crown cap']),
  }),
  /** An instructor's own words, hung on an act by its step. */
  notes: v.pipe(
    v.array(
      v.strictObject({
        step: words(60),
        say: v.optional(words(200)),
        show: v.optional(words(600)),
        print: v.optional(words(600)),
      }),
    ),
    v.maxLength(80),
  ),
});

export type KitSheet = v.InferOutput<typeof kitSheetShape>;
export type Sachet = KitSheet['sachets'][number];
