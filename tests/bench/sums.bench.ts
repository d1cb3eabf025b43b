import { bench, describe } from 'vitest';
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
import { differ } from '../../src/domain/sums/differ';
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

/** A number that moves by a thousandth at every call, so that nothing can be worked out once and for all. */
let turns = 0;
const moving = (from: number, by: number): number => from + ((turns = (turns + 1) % 1000) / 1000) * by;

const FERMENT = [1.085, 1.072, 1.045, 1.026, 1.011, 1.001, 0.995].map((gravity, day) => ({
  day,
  gravity,
  celsius: 22,
}));
const WINE = { litres: 22, gravity: 0.996, alcohol: 12, sulphurDioxide: 40 };

const SUMS: Record<string, () => unknown> = {
  waterDensity: () => waterDensity(moving(10, 20)),
  sucroseSolutionDensity: () => sucroseSolutionDensity(moving(0.1, 0.2), 22),
  ethanolWaterDensity: () => ethanolWaterDensity(moving(0.05, 0.1), 22),
  alcoholByVolumeFromMass: () => alcoholByVolumeFromMass(moving(5, 10)),
  alcoholByMassFromVolume: () => alcoholByMassFromVolume(moving(5, 10)),
  brixFromGravity: () => brixFromGravity(moving(0.99, 0.1)),
  gravityFromBrix: () => gravityFromBrix(moving(0, 25)),
  oechsleFromGravity: () => oechsleFromGravity(moving(0.99, 0.1)),
  correctHydrometer: () => correctHydrometer({ reading: moving(0.988, 0.1), celsius: 17, calibratedAt: 20 }),
  'correctHydrometer, start known': () =>
    correctHydrometer({ reading: moving(0.988, 0.1), celsius: 17, calibratedAt: 20, start: 1.085 }),
  alcoholFromGravity: () => alcoholFromGravity({ start: 1.085, finish: moving(0.99, 0.09) }),
  sugarLeft: () => sugarLeft({ start: 1.085, now: moving(0.99, 0.09) }),
  sugarForAlcohol: () => sugarForAlcohol({ litres: 23, percent: moving(0, 2) }),
  volumeOfSugar: () => volumeOfSugar(moving(0, 2000)),
  blend: () => blend([WINE, { litres: moving(0.5, 1), gravity: 1.3, sugar: 800 }]),
  mixingTemperature: () =>
    mixingTemperature([
      { litres: 8, celsius: 18, gravity: 1.26 },
      { litres: 15, celsius: moving(15, 20) },
    ]),
  waterTemperatureFor: () =>
    waterTemperatureFor({
      parts: [{ litres: 8, celsius: 18, gravity: 1.26 }],
      waterLitres: 15,
      target: moving(18, 8),
    }),
  sulphurDioxideFrom: () => sulphurDioxideFrom({ metabisulphiteGrams: moving(1, 3), litres: 23 }),
  metabisulphiteFor: () => metabisulphiteFor({ rise: moving(20, 60), litres: 23 }),
  molecularSulphurDioxide: () => molecularSulphurDioxide({ free: 30, pH: moving(3, 0.8) }),
  sorbicAcidFrom: () => sorbicAcidFrom({ sorbateGrams: moving(3, 3), litres: 23 }),
  sorbateEnough: () => sorbateEnough({ sorbicAcid: 150, alcohol: moving(10, 4), pH: 3.4 }),
  carbonDioxideSaturation: () => carbonDioxideSaturation({ celsius: moving(5, 25), alcohol: 12, bar: 1.013 }),
  carbonDioxideFromSugar: () => carbonDioxideFromSugar(moving(0, 200)),
  roomCarbonDioxide: () =>
    roomCarbonDioxide({ litres: 23, start: 1.085, finish: moving(0.99, 0.05), roomCubicMetres: 30 }),
  bottlePressure: () =>
    bottlePressure({ sugar: moving(0, 20), celsius: 20, headspaceMl: 15, bottleMl: 750, dissolved: 1.4 }),
  foamRoom: () => foamRoom({ brimLitres: moving(24, 8), batchLitres: 23 }),
  headspace: () => headspace({ boreMm: 30, mm: moving(10, 50) }),
  bottlesFrom: () => bottlesFrom({ litres: moving(20, 5) }),
  readingUncertainty: () => readingUncertainty({ division: moving(0.0005, 0.002) }),
  unchangedLimit: () => unchangedLimit(moving(0.0005, 0.002)),
  differ: () => differ({ gravity: 0.996, division: 0.001 }, { gravity: moving(0.99, 0.01), division: 0.001 }),
  gravityByWeight: () => gravityByWeight({ waterGrams: 750, wineGrams: moving(742, 60), celsius: 18 }),
  forecastGravity: () => forecastGravity(FERMENT, { limit: moving(0.994, 0.004) }),
};

describe('each sum', () => {
  for (const [name, sum] of Object.entries(SUMS))
    bench(name, () => void sum(), { time: 300, warmupTime: 50 });
});
