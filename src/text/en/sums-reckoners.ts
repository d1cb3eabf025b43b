import type { Interval } from '../../domain/sums/ground/interval';
import type { WaterTemperature } from '../../domain/sums/water-temperature-for';
import type { Celsius, Litres } from '../../domain/unit';
import type { Formats } from '../formats';
import { thousandths } from './sums-figures';

/** Small sums to type into. The first line of an answer is the answer. */
export const reckoners = {
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
