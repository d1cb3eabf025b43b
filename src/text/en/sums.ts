import { asGravity } from '../../domain/gravity';
import type { FermentWarning } from '../../domain/sums/ground/ferment-warnings';
import type { Interval } from '../../domain/sums/ground/interval';
import type { SorbateVerdict } from '../../domain/sums/sorbate-enough';
import type { WaterTemperature } from '../../domain/sums/water-temperature-for';
import type { Celsius, Instant, Litres } from '../../domain/unit';
import type { KitSheet } from '../../procedure/kit-sheet';
import type { Formats } from '../formats';

/** A day of a forecast as the maker's calendar has it. */
type OnDay = { day: number; at: Instant };
type Expected = { value: OnDay; low: OnDay; high?: OnDay | undefined };

/** "about 12.1 % vol, give or take 0.4"; "at most 0.4 % vol" where it may be none. */
function about({ value, low, high }: Interval, unit: string, decimals: number, f: Formats): string {
  if (low <= 0) return `at most ${f.number(high, decimals)} ${unit}`;
  return `about ${f.number(value, decimals)} ${unit}, give or take ${f.number(Math.max(high - value, value - low), decimals)}`;
}

const gravity = (value: number, f: Formats): string => f.gravity(asGravity(value));

/** Ten-thousandths that no hydrometer shows are left out. */
const thousandths = (value: number, f: Formats): string =>
  f.gravity(asGravity(Math.round(value * 1000) / 1000));

const onDay = ({ day, at }: OnDay, f: Formats): string => `${f.dayNumber(day)} (${f.date(at)})`;

const when = ({ value, low, high }: Expected, f: Formats): string =>
  high === undefined
    ? `perhaps ${onDay(value, f)}. Not before ${onDay(low, f)} nine times in ten; how late, these readings cannot tell yet`
    : low.day === high.day
      ? `${onDay(value, f)}, four times in five`
      : `about ${onDay(value, f)}: four times in five from ${onDay(low, f)} to ${onDay(high, f)}`;

const closures: Record<KitSheet['bottle']['closure'], string> = {
  cork: 'corks',
  'screw cap': 'screw caps',
  'crown cap': 'crown caps',
};

const holding = {
  title: 'In the vessel',
  nothing: 'Nothing is measured yet. Fill to the mark first, and the ledger begins.',
  litres: (litres: Litres, f: Formats) => `${f.litres(litres)} now.`,
  reserve: (litres: Litres, f: Formats) => `${f.litres(litres)} more stand in the reserve.`,
  weight: (kilograms: number, f: Formats) =>
    `What is in the vessel weighs about ${f.number(kilograms, 0)} kg, and the vessel comes on top: do not lift it alone.`,
  bottles: (bottles: number, spare: number, closure: KitSheet['bottle']['closure'], f: Formats) =>
    `Plan for ${f.count(bottles)} bottles, give or take one, and ${f.count(spare)} ${closures[closure]}.`,
  left: (litres: Litres, f: Formats) =>
    `About ${f.litres(litres)} will not fill another: a glass for the maker.`,
  source:
    'The litres you measured, less what was taken and lost. Lees and hose keep 0.3 of a litre, and one closure in twenty is spare: common practice. Weight by the last gravity.',
};

const strength = {
  title: 'Alcohol and sugar',
  nothing: 'There is no start gravity yet. Read it before the yeast, or the alcohol can never be told.',
  noneYet: (start: number, f: Formats) => `Started at ${gravity(start, f)}; no reading of the ferment yet.`,
  fall: (start: number, now: number, f: Formats) => `From ${gravity(start, f)} to ${gravity(now, f)}:`,
  alcohol: (alcohol: Interval, f: Formats) => `${about(alcohol, '% vol', 1, f)} of alcohol.`,
  glass: (byMass: number, grams: number, f: Formats) =>
    `By weight that is about ${f.number(byMass, 1)} %; a glass of 125 ml holds about ${f.number(grams, 0)} g of alcohol.`,
  ahead: {
    forecast: (alcohol: Interval, f: Formats) => `Where the forecast ends: ${about(alcohol, '% vol', 1, f)}.`,
    limit: (alcohol: Interval, f: Formats) =>
      `Fermented to the dry limit it will have ${about(alcohol, '% vol', 1, f)}.`,
  },
  toppedUp: (litres: number, withWater: number, f: Formats) =>
    `You topped up with ${f.litres(litres as Litres)}. With water that comes to about ${f.number(withWater, 1)} % vol; with a like wine it stays as it was.`,
  source: (simpleRule: number, f: Formats) =>
    `Balling; the rule of 131.25 times the fall for comparison: ${f.number(simpleRule, 1)}.`,
  sugar: (sugar: Interval, f: Formats) =>
    `Sugar that yeast could still take: ${about(sugar, 'g', 0, f)} in each litre. A hydrometer cannot show it closer; only a sugar test can.`,
  sweetened: 'A sweetening pack is in since; its sugar is not counted here.',
  sugarSource: 'Balling’s real extract, less what must holds beside sugar (WINETECH, 2020).',
  reading: (by: number, f: Formats) =>
    `One corrected reading on your scale is good to give or take ${f.number(by, 4)}.`,
  apart: (by: number, differ: boolean, f: Formats) =>
    by === 0
      ? 'Your last two readings are the same.'
      : `Your last two readings lie ${f.number(by, 4)} apart: ${differ ? 'more than your scale can mistake.' : 'on your scale that can be no difference at all.'}`,
  readingSource:
    'Twice the standard uncertainty of scale, thermometer and repetition in quadrature (JCGM 100).',
};

const warnings: {
  [Code in FermentWarning['code']]: (w: Extract<FermentWarning, { code: Code }>, f: Formats) => string;
} = {
  stall: ({ probability, rest }, f) =>
    `It may come to rest too early, about ${thousandths(rest.value, f)}: ${f.number(probability * 10, 0)} courses in 10 that fit your readings do. See that it is warm, and read again in two days.`,
  cold: ({ celsius, warmEnough, daysLost }, f) =>
    `The wine was ${f.celsius(celsius as Celsius)} at the last reading; ${f.celsius(warmEnough as Celsius)} is wanted. Kept so cold, it takes about ${f.days(Math.round(daysLost))} longer than at ${f.celsius(21 as Celsius)}. Move it somewhere warmer.`,
  cooling: ({ warmEnough, inDays }, f) =>
    `The wine is cooling. At this pace it falls below ${f.celsius(warmEnough as Celsius)} in about ${f.days(Math.max(1, Math.round(inDays)))}. Keep it warm.`,
};

const forecast = {
  title: 'How it will go on',
  nothing: {
    before: 'A forecast begins with the yeast.',
    after: 'Fermentation is proven over: nothing is left to forecast.',
    beyond:
      'There is no forecast for this one: it reaches sixty days, and only a ferment that was never begun again.',
  },
  reached: (limit: number, on: OnDay, f: Formats) =>
    `The limit of ${gravity(limit, f)} was reached on ${onDay(on, f)}.`,
  limit: (limit: number, expected: Expected, f: Formats) =>
    `The limit of ${gravity(limit, f)}: ${when(expected, f)}.`,
  limitNotExpected: (limit: number, f: Formats) =>
    `By these readings it does not come down to ${gravity(limit, f)} in sixty days.`,
  gate: (expected: Expected, f: Formats) => `The dryness gate may open: ${when(expected, f)}.`,
  gateNotExpected: 'By these readings the dryness gate does not open in sixty days.',
  proof: 'A forecast opens nothing: only your readings do.',
  warnings,
  source:
    'Courses of ferments weighed by your readings, in the warmth that you read (Michaelis and Menten; Ough and Amerine, 1961). Before the third reading it is wide.',
};

const regions = { OIV: 'the OIV', EU: 'the European Union', US: 'the United States' } as const;

const additives = {
  title: 'Sulphite and sorbate',
  nothing:
    'No masses are printed on the sachets of this sheet, so nothing can be said of their dose. Use each sachet whole.',
  pH: 'Acidity (pH), if you have measured it',
  pHHint: 'Left empty, a pH of 3.2 to 3.6 is assumed.',
  sulphurDioxide: (added: number, f: Formats) =>
    `The sulphite sachets bring ${f.number(added, 0)} mg of sulphur dioxide to each litre; old powder up to a twentieth less.`,
  molecular: (low: number, high: number, assumed: boolean, f: Formats) =>
    `Were all of it free, ${f.number(low, 1)} to ${f.number(high, 1)} mg of that would be the molecular kind that keeps microbes down${assumed ? ' (the pH is assumed)' : ''}. Some is always bound: only a test of free sulphur dioxide tells.`,
  sorbicAcid: (sorbicAcid: number, f: Formats) =>
    `The sorbate sachets bring ${f.number(sorbicAcid, 0)} mg of sorbic acid to each litre, give or take 2 %.`,
  enough: (pH: number, verdict: SorbateVerdict, f: Formats) => {
    const at = `At pH ${f.number(pH, 2)}`;
    if (verdict.code === 'no-table')
      return `${at} no table says how much is enough: wine so mild or so weak is kept by being dry, clear and sulphited.`;
    return verdict.code === 'enough'
      ? `${at} that is enough; a handbook asks for ${f.number(verdict.needed, 0)} mg.`
      : `${at} a handbook asks for more: ${f.number(verdict.needed, 0)} mg.`;
  },
  noAlcohol: 'Whether it is enough depends on the alcohol, which is not known yet.',
  over: (over: SorbateVerdict['over'], f: Formats) =>
    over.length === 0
      ? `It is within what the OIV and the European Union (200 mg) and the United States (300 mg) allow.`
      : `It is more than ${f.list(over.map((region) => regions[region]))} would allow.`,
  source:
    'Stoichiometry; molecular share by pK 1.81 and by the OIV’s constant; sorbate by Underhill’s table, good to 10 to 20 %.',
};

/** Small sums to type into. The first line of an answer is the answer. */
const reckoners = {
  title: 'Reckon something',
  hint: 'Nothing typed here is recorded.',
  water: {
    title: 'How warm must the last water be?',
    litres: 'In the vessel now',
    celsius: 'As warm as',
    water: 'Water still to come',
    target: 'The must should land at',
    tap: 'Water from your tap, if you like',
    pour: (celsius: number, f: Formats) => `Pour the water at ${f.celsius(celsius as Celsius)}.`,
    notPour: (needed: Exclude<WaterTemperature, { code: 'pour' }>, f: Formats) =>
      needed.code === 'scalding'
        ? `It would take water of ${f.celsius(needed.celsius as Celsius)}, and above ${f.celsius(needed.limit as Celsius)} water scalds and cracks glass. Pour it no hotter than that, and let the room do the rest.`
        : `No water does it: it would have to be ${f.celsius(needed.celsius as Celsius)}. Pour it as it is, and let the must stand in a ${needed.celsius < needed.lowest ? 'cooler' : 'warmer'} room before the yeast.`,
    fromTap: (celsius: Celsius, f: Formats) => `Straight from the tap it lands at ${f.celsius(celsius)}.`,
    source: 'Heat balance, good to a degree; the vessel’s own heat is not counted. Measure before the yeast.',
  },
  alcohol: {
    title: 'Sugar for more alcohol',
    litres: 'Must, with the sugar in it',
    percent: 'More alcohol',
    answer: (grams: number, f: Formats) =>
      `${f.number(grams / 1000, 2)} kg of table sugar, give or take 6 %, before the yeast.`,
    swells: (litres: number, f: Formats) => `Dissolved, it adds ${f.litres(litres as Litres)}.`,
    caution:
      'The kit is balanced as it is: more alcohol makes it thinner and hotter to drink, strains the yeast, and moves the start gravity out of its sheet’s range.',
    source:
      '17 g in each litre for 1 % vol: common practice, 16 to 18 as the yeast has it. Volume: 27 CFR 24.181.',
  },
  blend: {
    title: 'Top up, or put two wines together',
    mine: 'This wine',
    other: 'What is put to it',
    otherHint: 'Water has a gravity of 1.000 and no alcohol. A pack has what is printed on it.',
    litres: 'Volume',
    gravity: 'Gravity',
    alcohol: 'Alcohol',
    answer: (litres: number, alcohol: number, f: Formats) =>
      `${f.litres(litres as Litres)} of about ${f.number(alcohol, 1)} % vol.`,
    gravityNow: (value: number, f: Formats) => `It will read about ${thousandths(value, f)}.`,
    source: 'Volumes and masses added; what mixing shrinks it by is a thousandth at most.',
  },
  sulphite: {
    title: 'Sulphite for a rise of sulphur dioxide',
    litres: 'Wine',
    rise: 'Rise of sulphur dioxide',
    answer: (grams: number, f: Formats) => `${f.number(grams, 1)} g of potassium metabisulphite.`,
    caution:
      'The sachets of the kit are meant to be enough. Add none before the wine is proven dry, weigh it on a fine scale, and leave it out where someone with asthma will drink.',
    source: 'Stoichiometry, of fresh powder; of old powder up to 5 % more.',
  },
  weight: {
    title: 'Gravity by weighing a full bottle',
    empty: 'The bottle, empty and dry',
    water: 'Full to the brim of water',
    wine: 'Full to the brim of wine',
    celsius: 'Both as warm as',
    answer: (weighed: Interval, f: Formats) =>
      `About ${thousandths(weighed.value, f)}, give or take ${f.number(weighed.high - weighed.value, 3)}.`,
    notWine: 'These weights are not those of one bottle full of water and of wine. Weigh again, dry outside.',
    caution:
      'This is for when the hydrometer is broken. It is too coarse to pass a gate: get another one before you stabilise.',
    source: 'A weighing bottle, with the air’s lift taken off; on a scale of 1 g.',
  },
  convert: {
    title: 'Gravity, Brix and Oechsle',
    from: 'What you have',
    scales: { gravity: 'Gravity', brix: '°Brix' },
    typed: { gravity: 'What the hydrometer shows', brix: 'Degrees Brix' },
    answer: {
      gravity: (value: number, f: Formats) => `Gravity ${f.number(value, 4)}.`,
      brix: (value: number, f: Formats) => `${f.number(value, 1)} °Brix.`,
    },
    oechsle: (value: number, f: Formats) => `${f.number(value, 0)} °Oechsle.`,
    grams: (value: number, f: Formats) =>
      `As table sugar in water, ${f.number(value, 0)} g in each litre; in must a little of that is not sugar.`,
    source: 'ICUMSA SPS-4, good to 0.03 °Brix. Not for wine: alcohol hides sugar.',
  },
  gap: {
    title: 'Air under the stopper',
    bore: 'Neck, measured inside',
    gap: 'From the wine to the stopper',
    answer: (ml: number, f: Formats) => `${f.number(ml, 0)} ml of air.`,
    share: (share: number, f: Formats) =>
      `That much wine would fill it; each millimetre is ${f.number(share, 1)} ml.`,
    source: 'Volume of a cylinder, within the straight part of the neck.',
  },
};

/** The page of sums: what a batch's readings come to, how sure that is, and where each sum is from. */
export const sums = {
  title: (name: string) => `Sums of ${name}`,
  link: 'sums',
  linkOf: (name: string) => `Sums of ${name}`,
  lead: 'What your own readings come to, and how sure that is. Nothing here opens a gate.',
  source: 'By',
  gas: 'How much carbon dioxide it gives off in your room is on the',
  caution: 'Mind',
  units: { percent: '% vol', milligrams: 'mg in each litre', grams: 'g', millimetres: 'mm', brix: '°Brix' },
  holding,
  strength,
  forecast,
  additives,
  reckoners,
};
