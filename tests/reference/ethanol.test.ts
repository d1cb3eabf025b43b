import { ethanolWaterDensity } from '../../src/domain/sums/ethanol-water-density';
import tables from './data/ethanol.json';
import { holdTo, inAir } from './hold-to';

const SIXTY_F = 15.56;
const airAt = (percentByMass: number, celsius: number) =>
  inAir(ethanolWaterDensity(percentByMass / 100, celsius), ethanolWaterDensity(0, celsius));
/** % vol at 60 °F: the volume of the alcohol in a litre, both at that temperature. */
const byVolumeAt60F = (percentByMass: number) =>
  (percentByMass * ethanolWaterDensity(percentByMass / 100, SIXTY_F)) / ethanolWaterDensity(1, SIXTY_F);

for (const table of [tables.oiml, tables.oimlPure])
  holdTo(
    'ethanol and water, kg/m³',
    table,
    ({ massFraction, celsius }) => ethanolWaterDensity(massFraction, celsius),
    ({ density }) => density,
  );

holdTo(
  'ethanol and water at 20 °C, kg/m³',
  tables.perry,
  ({ percentByMass }) => ethanolWaterDensity(percentByMass / 100, 20),
  ({ density }) => density,
);

holdTo(
  'gravity in air at 25 °C',
  tables.pharmacopeia,
  ({ percentByMass }) => airAt(percentByMass, 25),
  ({ at25 }) => at25,
);

holdTo(
  'gravity in air at 60 °F',
  tables.pharmacopeia,
  ({ percentByMass }) => airAt(percentByMass, SIXTY_F),
  ({ at60F }) => at60F,
);

holdTo(
  '% vol at 60 °F of a strength by mass',
  { ...tables.pharmacopeia, tolerance: 0.02, because: 'the strength by mass is printed to 0.01 %' },
  ({ percentByMass }) => byVolumeAt60F(percentByMass),
  ({ percentByVolume60F }) => percentByVolume60F,
);
