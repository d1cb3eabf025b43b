import { sucroseSolutionDensity } from '../../src/domain/sums/sucrose-solution-density';
import { sugarForAlcohol } from '../../src/domain/sums/sugar-for-alcohol';
import { volumeOfSugar } from '../../src/domain/sums/volume-of-sugar';
import tables from './data/sugar.json';
import { holdTo } from './hold-to';

const GRAMS_PER_POUND = 453.59237;
const LITRES_PER_US_GALLON = 3.785411784;

holdTo(
  'litres that a kilogram of sugar takes up',
  tables.volume,
  () => volumeOfSugar(1000),
  ({ pounds, usGallons }) => (usGallons * LITRES_PER_US_GALLON * 1000) / (pounds * GRAMS_PER_POUND),
);

holdTo(
  'litres that a kilogram of sugar takes up',
  tables.specificVolume,
  () => volumeOfSugar(1000),
  ({ litresPerKilogram }) => litresPerKilogram,
);

holdTo(
  'the same, out of the density of its solution',
  {
    ...tables.specificVolume,
    tolerance: 0.001,
    because: 'L/kg: worked out from densities printed to 0.1 kg/m³',
  },
  ({ brix }) => {
    const [solution, water] = [sucroseSolutionDensity(brix / 100, 20), sucroseSolutionDensity(0, 20)];
    return (1000 * (1 / solution - (1 - brix / 100) / water)) / (brix / 100);
  },
  ({ litresPerKilogram }) => litresPerKilogram,
);

holdTo(
  '% vol from a pound of sugar',
  tables.onePound,
  ({ pounds, usGallons }) =>
    (pounds * GRAMS_PER_POUND) / sugarForAlcohol({ litres: usGallons * LITRES_PER_US_GALLON, percent: 1 }),
  ({ percent }) => percent,
);
