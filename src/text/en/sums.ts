import type { Interval } from '../../domain/sums/ground/interval';
import type { SorbateVerdict } from '../../domain/sums/sorbate-enough';
import type { Litres } from '../../domain/unit';
import type { KitSheet } from '../../procedure/kit-sheet';
import type { Formats } from '../formats';
import { about, gravity } from './sums-figures';
import { forecast } from './sums-forecast';
import { reckoners } from './sums-reckoners';

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
