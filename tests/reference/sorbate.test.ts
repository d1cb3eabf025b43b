import { sorbateEnough } from '../../src/domain/sums/sorbate-enough';
import { sorbicAcidFrom } from '../../src/domain/sums/sorbic-acid-from';
import tables from './data/sorbate.json';
import { holdTo } from './hold-to';

holdTo(
  'sorbic acid that suffices, mg/L',
  tables.handbook,
  ({ alcohol, pH }) => {
    const verdict = sorbateEnough({ sorbicAcid: 0, alcohol, pH });
    return verdict.code === 'no-table' ? Number.NaN : verdict.needed;
  },
  ({ acid }) => Math.min(acid, 200),
);

holdTo(
  'sorbic acid of the largest dose, mg/L',
  { ...tables.ceiling, tolerance: 0.02 },
  ({ grams, litres }) => sorbicAcidFrom({ sorbateGrams: grams, litres }),
  ({ acid }) => acid,
);
