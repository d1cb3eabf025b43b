import { alcoholByMassFromVolume } from '../../src/domain/sums/alcohol-by-mass-from-volume';
import { alcoholByVolumeFromMass } from '../../src/domain/sums/alcohol-by-volume-from-mass';
import { alcoholFromGravity } from '../../src/domain/sums/alcohol-from-gravity';
import { blend } from '../../src/domain/sums/blend';
import { bottlePressure } from '../../src/domain/sums/bottle-pressure';
import { bottlesFrom } from '../../src/domain/sums/bottles-from';
import { brixFromGravity } from '../../src/domain/sums/brix-from-gravity';
import { carbonDioxideFromSugar } from '../../src/domain/sums/carbon-dioxide-from-sugar';
import { carbonDioxideSaturation } from '../../src/domain/sums/carbon-dioxide-saturation';
import { correctHydrometer } from '../../src/domain/sums/correct-hydrometer';
import { ethanolWaterDensity } from '../../src/domain/sums/ethanol-water-density';
import { foamRoom } from '../../src/domain/sums/foam-room';
import { forecastGravity } from '../../src/domain/sums/forecast-gravity';
import { gravityByWeight } from '../../src/domain/sums/gravity-by-weight';
import { gravityFromBrix } from '../../src/domain/sums/gravity-from-brix';
import { headspace } from '../../src/domain/sums/headspace';
import { metabisulphiteFor } from '../../src/domain/sums/metabisulphite-for';
import { mixingTemperature } from '../../src/domain/sums/mixing-temperature';
import { molecularSulphurDioxide } from '../../src/domain/sums/molecular-sulphur-dioxide';
import { oechsleFromGravity } from '../../src/domain/sums/oechsle-from-gravity';
import { readingUncertainty } from '../../src/domain/sums/reading-uncertainty';
import { roomCarbonDioxide } from '../../src/domain/sums/room-carbon-dioxide';
import { sorbateEnough } from '../../src/domain/sums/sorbate-enough';
import { sorbicAcidFrom } from '../../src/domain/sums/sorbic-acid-from';
import { sucroseSolutionDensity } from '../../src/domain/sums/sucrose-solution-density';
import { sugarForAlcohol } from '../../src/domain/sums/sugar-for-alcohol';
import { sugarLeft } from '../../src/domain/sums/sugar-left';
import { sulphurDioxideFrom } from '../../src/domain/sums/sulphur-dioxide-from';
import { unchangedLimit } from '../../src/domain/sums/unchanged-limit';
import { volumeOfSugar } from '../../src/domain/sums/volume-of-sugar';
import { waterDensity } from '../../src/domain/sums/water-density';
import { waterTemperatureFor } from '../../src/domain/sums/water-temperature-for';

/** As many numbers as any sum takes; a sum that takes fewer leaves the rest. */
export type Numbers = [number, number, number, number, number, number];
/** Each sum with the ends of its ranges, two by two: what lies inside them must not be refused. */
export const SUMS: Record<string, { ranges: readonly number[]; sum: (...given: Numbers) => unknown }> = {
  waterDensity: { ranges: [0, 40], sum: (t) => waterDensity(t) },
  sucroseSolutionDensity: {
    ranges: [0, 0.85, 0, 80],
    sum: (w, t) => sucroseSolutionDensity(w, t),
  },
  ethanolWaterDensity: {
    ranges: [0, 1, -20, 40],
    sum: (p, t) => ethanolWaterDensity(p, t),
  },
  alcoholByVolumeFromMass: { ranges: [0, 100], sum: (p) => alcoholByVolumeFromMass(p) },
  alcoholByMassFromVolume: { ranges: [0, 100], sum: (q) => alcoholByMassFromVolume(q) },
  brixFromGravity: { ranges: [0.98, 1.4], sum: (gravity) => brixFromGravity(gravity) },
  gravityFromBrix: { ranges: [-5, 80], sum: (brix) => gravityFromBrix(brix) },
  oechsleFromGravity: { ranges: [0.98, 1.4], sum: (gravity) => oechsleFromGravity(gravity) },
  correctHydrometer: {
    ranges: [0.97, 1.18, 0, 40, 1.02, 1.17],
    sum: (reading, celsius, start) => correctHydrometer({ reading, celsius, calibratedAt: 15.56, start }),
  },
  'correctHydrometer, start unknown': {
    ranges: [0.97, 1.18, 0, 40],
    sum: (reading, celsius) => correctHydrometer({ reading, celsius, calibratedAt: 20 }),
  },
  alcoholFromGravity: {
    ranges: [1, 1.17, 0.98, 1.17],
    sum: (start, finish) => alcoholFromGravity({ start, finish }),
  },
  sugarLeft: {
    ranges: [1, 1.17, 0.98, 1.17],
    sum: (start, now) => sugarLeft({ start, now }),
  },
  sugarForAlcohol: {
    ranges: [0.1, 100, 0, 5],
    sum: (litres, percent) => sugarForAlcohol({ litres, percent }),
  },
  volumeOfSugar: { ranges: [0, 30_000], sum: (grams) => volumeOfSugar(grams) },
  blend: {
    ranges: [0.1, 100, 0.98, 1.4, 0, 20, 0, 1000, 0, 10_000, 0, 10_000],
    sum: (litres, gravity, alcohol, sugar, sulphurDioxide, sorbicAcid) =>
      blend([
        { litres, gravity, alcohol, sugar, sulphurDioxide, sorbicAcid },
        { litres: 1, gravity: 1 },
      ]),
  },
  mixingTemperature: {
    ranges: [0.1, 100, 0, 100, 0.98, 1.4],
    sum: (litres, celsius, gravity) =>
      mixingTemperature([
        { litres, celsius, gravity },
        { litres: 1, celsius: 20 },
      ]),
  },
  waterTemperatureFor: {
    ranges: [0, 100, 0, 100, 0.98, 1.4, 0.1, 100, 5, 40],
    sum: (litres, celsius, gravity, waterLitres, target) =>
      waterTemperatureFor({ parts: [{ litres, celsius, gravity }], waterLitres, target }),
  },
  sulphurDioxideFrom: {
    ranges: [0, 200, 0.1, 100],
    sum: (metabisulphiteGrams, litres) => sulphurDioxideFrom({ metabisulphiteGrams, litres }),
  },
  metabisulphiteFor: {
    ranges: [0, 500, 0.1, 100],
    sum: (rise, litres) => metabisulphiteFor({ rise, litres }),
  },
  molecularSulphurDioxide: {
    ranges: [0, 500, 2.8, 4.2, 0, 20],
    sum: (free, pH, alcohol) => molecularSulphurDioxide({ free, pH, alcohol }),
  },
  sorbicAcidFrom: {
    ranges: [0, 100, 0.1, 100],
    sum: (sorbateGrams, litres) => sorbicAcidFrom({ sorbateGrams, litres }),
  },
  sorbateEnough: {
    ranges: [0, 1000, 0, 20, 2.8, 4.2],
    sum: (sorbicAcid, alcohol, pH) => sorbateEnough({ sorbicAcid, alcohol, pH }),
  },
  carbonDioxideSaturation: {
    ranges: [0, 40, 0, 20, 0, 10],
    sum: (celsius, alcohol, bar) => carbonDioxideSaturation({ celsius, alcohol, bar }),
  },
  carbonDioxideFromSugar: { ranges: [0, 400], sum: (sugar) => carbonDioxideFromSugar(sugar) },
  roomCarbonDioxide: {
    ranges: [0.1, 100, 1, 1.17, 0.98, 1.17, 0.1, 1000],
    sum: (litres, start, finish, roomCubicMetres) =>
      roomCarbonDioxide({ litres, start, finish, roomCubicMetres }),
  },
  bottlePressure: {
    ranges: [0, 30, 0, 40, 0, 200, 100, 5000, 0, 5, 0, 20],
    sum: (sugar, celsius, headspaceMl, bottleMl, dissolved, alcohol) =>
      bottlePressure({ sugar, celsius, headspaceMl, bottleMl, dissolved, alcohol }),
  },
  foamRoom: {
    ranges: [0.1, 200, 0.1, 200],
    sum: (brimLitres, batchLitres) => foamRoom({ brimLitres, batchLitres }),
  },
  headspace: {
    ranges: [10, 200, 0, 500],
    sum: (boreMm, mm) => headspace({ boreMm, mm }),
  },
  bottlesFrom: {
    ranges: [0, 100, 100, 5000, 0, 20],
    sum: (litres, bottleMl, lossLitres) => bottlesFrom({ litres, bottleMl, lossLitres }),
  },
  readingUncertainty: {
    ranges: [0.0001, 0.01, 0, 5, 0, 0.005],
    sum: (division, kelvin, repeats) => readingUncertainty({ division, kelvin, repeats }),
  },
  unchangedLimit: {
    ranges: [0.0001, 0.01, 0.0001, 0.01],
    sum: (a, b) => unchangedLimit(a, b),
  },
  gravityByWeight: {
    ranges: [100, 30_000, 0.971, 1.179, 0, 40, 0.001, 10, 1.02, 1.17],
    sum: (waterGrams, heavier, celsius, scaleGrams, start) =>
      gravityByWeight({ waterGrams, wineGrams: waterGrams * heavier, celsius, scaleGrams, start }),
  },
  forecastGravity: {
    ranges: [0, 30, 0.98, 1.17, 0, 40, 0.98, 1.17, 0, 40, 0.985, 1.01],
    sum: (day, first, cool, then, warm, limit) =>
      forecastGravity(
        [
          { day: day / 2, gravity: first, celsius: cool },
          { day, gravity: then, celsius: warm },
        ],
        { limit },
      ),
  },
};
