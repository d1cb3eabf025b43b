import { bottlesFrom } from '../../src/domain/sums/bottles-from';
import { unchangedLimit } from '../../src/domain/sums/unchanged-limit';
import tables from './data/bottles.json';
import { holdTo } from './hold-to';

const LITRES_PER_US_GALLON = 3.785411784;

holdTo(
  'most bottles',
  tables.sixGallons,
  ({ usGallons }) => bottlesFrom({ litres: usGallons * LITRES_PER_US_GALLON, lossLitres: 0 }).bottles,
  ({ most }) => most,
);

holdTo(
  'bottles after the usual losses',
  tables.sixGallons,
  ({ usGallons }) => bottlesFrom({ litres: usGallons * LITRES_PER_US_GALLON }).bottles,
  ({ fewest }) => fewest,
);

holdTo(
  'bottles and a part of one',
  tables.litresInGallons,
  ({ litres }) => {
    const { bottles, leftMl } = bottlesFrom({ litres, lossLitres: 0 });
    return bottles + leftMl / 750;
  },
  ({ bottles }) => bottles,
);

holdTo(
  'largest difference that is none',
  tables.unchanged,
  ({ division }) => unchangedLimit(division),
  ({ limit }) => limit,
);
