import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { alcoholByMassFromVolume } from '../../src/domain/sums/alcohol-by-mass-from-volume';
import { alcoholByVolumeFromMass } from '../../src/domain/sums/alcohol-by-volume-from-mass';
import { alcoholFromGravity } from '../../src/domain/sums/alcohol-from-gravity';
import { bottlePressure } from '../../src/domain/sums/bottle-pressure';
import { brixFromGravity } from '../../src/domain/sums/brix-from-gravity';
import { carbonDioxideSaturation } from '../../src/domain/sums/carbon-dioxide-saturation';
import { correctHydrometer } from '../../src/domain/sums/correct-hydrometer';
import { differ } from '../../src/domain/sums/differ';
import { ethanolWaterDensity } from '../../src/domain/sums/ethanol-water-density';
import { gravityFromBrix } from '../../src/domain/sums/gravity-from-brix';
import { headspace } from '../../src/domain/sums/headspace';
import { metabisulphiteFor } from '../../src/domain/sums/metabisulphite-for';
import { mixingTemperature } from '../../src/domain/sums/mixing-temperature';
import { molecularSulphurDioxide } from '../../src/domain/sums/molecular-sulphur-dioxide';
import { sorbateEnough } from '../../src/domain/sums/sorbate-enough';
import { sucroseSolutionDensity } from '../../src/domain/sums/sucrose-solution-density';
import { sugarLeft } from '../../src/domain/sums/sugar-left';
import { sulphurDioxideFrom } from '../../src/domain/sums/sulphur-dioxide-from';
import { waterDensity } from '../../src/domain/sums/water-density';
import { waterTemperatureFor } from '../../src/domain/sums/water-temperature-for';
import { holds, within } from './holds';

/** A pair of which the second is larger by at least a step. */
const rising = (min: number, max: number, step: number) =>
  fc
    .tuple(within(min, max - step), within(step, max - min))
    .map(([low, rise]) => [low, Math.min(low + rise, max)] as const);

const reading = within(0.98, 1.17);
const celsius = within(0, 40);
const scale = fc.constantFrom(20 as const, 15.56 as const);

describe('a hydrometer correction', () => {
  test('vanishes at 20 °C on an instrument made for it', () =>
    holds([reading], (read) =>
      expect(correctHydrometer({ reading: read, celsius: 20, calibratedAt: 20 })).toBeCloseTo(read, 11),
    ));

  test('makes 1.0000 of water, on either instrument, at any temperature', () =>
    holds([celsius, scale], (t, calibratedAt) => {
      const glass = 1 + 25e-6 * (t - calibratedAt);
      const shown = (waterDensity(t) * glass) / waterDensity(calibratedAt);
      expect(correctHydrometer({ reading: shown, celsius: t, calibratedAt })).toBeCloseTo(1, 11);
    }));

  test('finds must that was worked out from its strength', () =>
    holds([within(0, 0.35), celsius, scale], (sugar, t, calibratedAt) => {
      const perWater = sucroseSolutionDensity(sugar, t) / sucroseSolutionDensity(0, t);
      const shown =
        (perWater * waterDensity(t) * (1 + 25e-6 * (t - calibratedAt))) / waterDensity(calibratedAt);
      fc.pre(shown >= 0.97 && shown <= 1.18);
      expect(correctHydrometer({ reading: shown, celsius: t, calibratedAt })).toBeCloseTo(
        gravityFromBrix(sugar * 100),
        9,
      );
    }));

  test('keeps the order of readings', () =>
    holds([rising(0.98, 1.17, 1e-5), celsius, scale], ([low, high], t, calibratedAt) =>
      expect(correctHydrometer({ reading: high, celsius: t, calibratedAt })).toBeGreaterThan(
        correctHydrometer({ reading: low, celsius: t, calibratedAt }),
      ),
    ));

  test('makes no leap anywhere, with a start or without', () =>
    holds([within(0.98, 1.169), celsius, fc.constantFrom(undefined, 1.05, 1.09)], (low, t, start) => {
      const at = (read: number) =>
        correctHydrometer({ reading: read, celsius: t, calibratedAt: 20, ...(start ? { start } : {}) });
      expect(at(low + 1e-6) - at(low)).toBeGreaterThan(0);
      expect(at(low + 1e-6) - at(low)).toBeLessThan(3e-6);
    }));

  test('rises with the temperature from 7 °C on, below which water itself turns back', () =>
    holds([reading, rising(7, 40, 1e-3), scale], (read, [cool, warm], calibratedAt) =>
      expect(correctHydrometer({ reading: read, celsius: warm, calibratedAt })).toBeGreaterThan(
        correctHydrometer({ reading: read, celsius: cool, calibratedAt }),
      ),
    ));
});

describe('there and back', () => {
  test('Brix and gravity', () =>
    holds([within(-5, 75)], (brix) => expect(brixFromGravity(gravityFromBrix(brix))).toBeCloseTo(brix, 9)));

  test('alcohol by mass and by volume', () =>
    holds([within(0, 100)], (byMass) =>
      expect(alcoholByMassFromVolume(alcoholByVolumeFromMass(byMass))).toBeCloseTo(byMass, 9),
    ));

  test('sulphite and its dose', () =>
    holds([within(0, 100), within(1, 100)], (rise, litres) =>
      expect(
        sulphurDioxideFrom({ metabisulphiteGrams: metabisulphiteFor({ rise, litres }), litres }),
      ).toBeCloseTo(rise, 9),
    ));

  test('a gap by depth and by volume', () =>
    holds([within(10, 200), within(0, 500)], (boreMm, mm) =>
      expect(headspace({ boreMm, ml: headspace({ boreMm, mm }).ml }).mm).toBeCloseTo(mm, 9),
    ));

  test('water that lands a batch and the batch that it lands', () =>
    holds(
      [within(1, 20), within(5, 35), within(1, 1.35), within(10, 20)],
      (litres, t, gravity, waterLitres) => {
        const juice = { litres, celsius: t, gravity };
        const water = waterTemperatureFor({ parts: [juice], waterLitres, target: 22 });
        fc.pre(water.code !== 'impossible');
        expect(mixingTemperature([juice, { litres: waterLitres, celsius: water.celsius }])).toBeCloseTo(
          22,
          9,
        );
      },
    ));
});

describe('more of one makes more of the other', () => {
  const more = (
    name: string,
    [min, max]: readonly [number, number],
    step: number,
    sum: (x: number) => number,
  ) =>
    test(name, () =>
      holds([rising(min, max, step)], ([low, high]) => expect(sum(high)).toBeGreaterThan(sum(low))),
    );

  more('density with sugar', [0, 0.85], 1e-4, (sugar) => sucroseSolutionDensity(sugar, 20));
  more('lightness with alcohol', [0, 1], 1e-4, (alcohol) => -ethanolWaterDensity(alcohol, 20));
  more('lightness with warmth', [4.1, 40], 1e-2, (t) => -waterDensity(t));
  more('lightness of must with warmth', [5, 80], 1e-2, (t) => -sucroseSolutionDensity(0.2, t));
  more(
    'alcohol with the start',
    [1.03, 1.17],
    1e-4,
    (start) => alcoholFromGravity({ start, finish: 0.996 }).value,
  );
  more(
    'alcohol with the fall',
    [-1.08, -0.985],
    1e-4,
    (finish) => alcoholFromGravity({ start: 1.09, finish: -finish }).value,
  );
  more('sugar left with the gravity', [0.996, 1.08], 1e-4, (now) => sugarLeft({ start: 1.09, now }).value);
  more('pressure with sugar', [0, 30], 1e-3, (sugar) =>
    bottlePressure({ sugar, celsius: 20, headspaceMl: 15, bottleMl: 750, dissolved: 1.4 }),
  );
  more('pressure with warmth', [0, 40], 1e-3, (t) =>
    bottlePressure({ sugar: 4, celsius: t, headspaceMl: 15, bottleMl: 750, dissolved: 1.4 }),
  );
  more('gas held with cold', [-40, 0], 1e-3, (cold) =>
    carbonDioxideSaturation({ celsius: -cold, alcohol: 12, bar: 1 }),
  );
  more(
    'molecular sulphur dioxide with sourness',
    [-4.2, -2.8],
    1e-3,
    (pH) => molecularSulphurDioxide({ free: 30, pH: -pH }).value,
  );
  more('need of sorbate with mildness', [3.1, 3.5], 1e-3, (pH) => {
    const verdict = sorbateEnough({ sorbicAcid: 0, alcohol: 12, pH });
    return verdict.code === 'no-table' ? Number.NaN : verdict.needed;
  });
});

test('yeast never makes more alcohol than the sugar holds', () => {
  const ETHANOL_FROM_SUCROSE = (4 * 46.068) / 342.297;
  holds([within(1, 1.17), within(0.98, 1.17)], (start, finish) => {
    const extract = (Math.max(0, brixFromGravity(start)) / 100) * start * 998.2;
    const alcohol = (alcoholFromGravity({ start, finish }).value / 100) * 789.24;
    expect(alcohol).toBeLessThanOrEqual(ETHANOL_FROM_SUCROSE * extract + 1e-9);
  });
});

test('to differ is mutual, and nothing differs from itself', () =>
  holds([reading, reading, fc.constantFrom(0.001, 0.002), fc.constantFrom(0.001, 0.002)], (a, b, d, e) => {
    const [one, other] = [
      { gravity: a, division: d },
      { gravity: b, division: e },
    ];
    expect(differ(one, other)).toBe(differ(other, one));
    expect(differ(one, one)).toBe(false);
  }));
