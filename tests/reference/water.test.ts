import { ethanolWaterDensity } from '../../src/domain/sums/ethanol-water-density';
import { waterDensity } from '../../src/domain/sums/water-density';
import iapws from './data/iapws-95.json';
import { holdTo } from './hold-to';

holdTo(
  'water, kg/m³',
  iapws,
  ({ celsius }) => waterDensity(celsius),
  ({ density }) => density,
);

holdTo(
  'water, kg/m³, against the older water of the alcohol tables',
  {
    source: 'OIML R 22 / Council Directive 76/766/EEC, coefficients A1 and B1 to B6',
    read: 'published text',
    tolerance: 0.008,
    because: 'that formula rests on an older temperature scale, 0.005 to 0.006 kg/m³ lower',
    rows: [10, 15, 20, 25, 30].map((celsius) => ({ celsius })),
  },
  ({ celsius }) => waterDensity(celsius),
  ({ celsius }) => ethanolWaterDensity(0, celsius),
);
