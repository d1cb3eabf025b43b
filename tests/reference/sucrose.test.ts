import { brixFromGravity } from '../../src/domain/sums/brix-from-gravity';
import { gravityFromBrix } from '../../src/domain/sums/gravity-from-brix';
import { polynomial } from '../../src/domain/sums/ground/polynomial';
import { sucroseSolutionDensity } from '../../src/domain/sums/sucrose-solution-density';
import { sugarLeft } from '../../src/domain/sums/sugar-left';
import circular from './data/nbs-c440.json';
import tables from './data/sucrose.json';
import { holdTo, inAir } from './hold-to';

const densityOf = (brix: number) => sucroseSolutionDensity(brix / 100, 20);
const apparent = (brix: number) => inAir(densityOf(brix), densityOf(0));
const toForty = circular.rows.filter(({ brix }) => brix <= 40);
const aboveForty = circular.rows.filter(({ brix }) => brix > 40 && brix <= 85);

holdTo(
  'sucrose solution, kg/m³',
  tables.crcDensity,
  ({ brix }) => densityOf(brix),
  ({ density }) => density,
);

holdTo(
  'sugar in a litre, g/L',
  tables.crcConcentration,
  ({ brix }) => (densityOf(brix) * brix) / 100,
  ({ gramsPerLitre }) => gramsPerLitre,
);

holdTo(
  'gravity in air of a sucrose solution',
  { ...circular, rows: toForty },
  ({ brix }) => apparent(brix),
  (row) => row.apparent,
);

holdTo(
  'gravity in air of a syrup',
  {
    ...circular,
    tolerance: 0.0007,
    because:
      'above 40 Brix the two part further, up to 0.0006 at 85: a third of a division of a kitchen scale',
    rows: aboveForty,
  },
  ({ brix }) => apparent(brix),
  (row) => row.apparent,
);

holdTo(
  'Brix of a gravity',
  {
    ...circular,
    tolerance: 0.03,
    because: 'degrees: the table was weighed in air, which alone is 0.02 at 20 Brix',
    rows: toForty,
  },
  (row) => brixFromGravity(row.apparent),
  ({ brix }) => brix,
);

holdTo(
  'degrees Plato of a gravity',
  tables.asbcPlato,
  ({ gravity }) => brixFromGravity(gravity),
  ({ a0, a1, a2, a3, gravity }) => polynomial([a0, a1, a2, a3], gravity),
);

holdTo(
  'sugar of must, as a share of what the published must held',
  tables.winetechSugar,
  ({ brix, sugar }) => {
    const start = Math.min(1.17, gravityFromBrix(brix));
    return sugarLeft({ start, now: start }).value / sugar;
  },
  () => 1,
);
