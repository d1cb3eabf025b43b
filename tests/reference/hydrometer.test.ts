import { brixFromGravity } from '../../src/domain/sums/brix-from-gravity';
import { correctHydrometer } from '../../src/domain/sums/correct-hydrometer';
import { gravityFromBrix } from '../../src/domain/sums/gravity-from-brix';
import tables from './data/hydrometer.json';
import { holdTo } from './hold-to';

const { nca, brixHydrometer } = tables;
const celsiusOf = (fahrenheit: number) => (fahrenheit - 32) / 1.8;
const corrected = (brix: number, celsius: number) =>
  correctHydrometer({ reading: gravityFromBrix(brix), celsius, calibratedAt: 20 });

holdTo(
  'gravity to add to a reading of juice',
  nca,
  ({ fahrenheit }) => corrected(nca.brix, celsiusOf(fahrenheit)) - gravityFromBrix(nca.brix),
  ({ addGravity }) => addGravity,
);

holdTo(
  'Brix to add to a reading of juice',
  { ...nca, tolerance: nca.toleranceBrix },
  ({ fahrenheit }) => brixFromGravity(corrected(nca.brix, celsiusOf(fahrenheit))) - nca.brix,
  ({ addBrix }) => addBrix,
);

holdTo(
  'Brix to take off a reading at 15 °C',
  brixHydrometer,
  ({ brix, celsius }) => brix - brixFromGravity(corrected(brix, celsius)),
  ({ subtract }) => subtract,
);
