import { bottlePressure } from '../../src/domain/sums/bottle-pressure';
import { carbonDioxideSaturation } from '../../src/domain/sums/carbon-dioxide-saturation';
import { roomCarbonDioxide } from '../../src/domain/sums/room-carbon-dioxide';
import tables from './data/carbon-dioxide.json';
import { holdTo } from './hold-to';

const ATMOSPHERE = 1.01325;
const HEXOSE_FROM_SUCROSE = 1.0526;
const { crc, weiss, tirage, aphrometer, gasPerMust, exposure, stillWine } = tables;
const inWater = (celsius: number, bar: number) => carbonDioxideSaturation({ celsius, alcohol: 0, bar });
const bottled = { headspaceMl: 15, bottleMl: 750, dissolved: 0 };

holdTo(
  'carbon dioxide in water, as a share of the published',
  crc,
  ({ celsius, thousandMoleFraction }) =>
    inWater(celsius, 1) / ((thousandMoleFraction * 44.0095) / (18.015 * (1 - thousandMoleFraction / 1000))),
  () => 1,
);

holdTo(
  'carbon dioxide in water, as a share of the published',
  weiss,
  ({ celsius, gramsPerLitreAtmosphere }) => inWater(celsius, ATMOSPHERE) / gramsPerLitreAtmosphere,
  () => 1,
);

holdTo(
  'pressure that sugar adds to a bottle, atm',
  tirage,
  ({ sucrose, celsius }) =>
    bottlePressure({ ...bottled, sugar: sucrose * HEXOSE_FROM_SUCROSE, celsius }) / ATMOSPHERE + 1,
  ({ atmospheres }) => atmospheres,
);

holdTo(
  'overpressure at 20 °C by that at another temperature, as a share of the published',
  aphrometer,
  ({ celsius, ratio }) => {
    const at = (t: number) => bottlePressure({ ...bottled, sugar: 24, celsius: t }) + ATMOSPHERE;
    return at(20) / at(celsius) / ratio;
  },
  () => 1,
);

holdTo(
  'litres of gas from a litre of must',
  gasPerMust,
  ({ start, finish }) => roomCarbonDioxide({ litres: 1, start, finish, roomCubicMetres: 30 }).litresOfGas,
  ({ litresOfGas }) => litresOfGas,
);

for (const limit of ['eightHours', 'quarterHour', 'dangerous'] as const)
  holdTo(
    `exposure limit, ${limit}, ppm`,
    exposure,
    () => roomCarbonDioxide({ litres: 23, start: 1.09, finish: 0.996, roomCubicMetres: 30 }).limits[limit],
    (row) => row[limit],
  );

holdTo(
  'pressure of the most gas that still wine may hold, bar over',
  stillWine,
  ({ gramsPerLitre, celsius, alcohol }) =>
    bottlePressure({ ...bottled, sugar: 0, celsius, alcohol, dissolved: gramsPerLitre }),
  ({ over }) => over,
);
