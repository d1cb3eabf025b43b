import { metabisulphiteFor } from '../../src/domain/sums/metabisulphite-for';
import { molecularSulphurDioxide } from '../../src/domain/sums/molecular-sulphur-dioxide';
import tables from './data/sulphite.json';
import { holdTo } from './hold-to';

const { extension, oivMolecular, oivThermodynamic, customaryDose } = tables;
const share = (pH: number) => molecularSulphurDioxide({ free: 100, pH }).value;
const freeFor = (target: number) => ({
  ...extension,
  tolerance: extension.toleranceFree,
  rows: extension.rows.filter((row) => (target === 0.8 ? row.freeFor0_8 : row.freeFor0_5) !== null),
});

holdTo(
  'molecular share of the free, %',
  { ...extension, rows: extension.rows.filter(({ percent }) => percent !== null) },
  ({ pH }) => share(pH),
  ({ percent }) => percent ?? 0,
);

holdTo(
  'free sulphur dioxide for 0.8 mg/L',
  freeFor(0.8),
  ({ pH }) => 80 / share(pH),
  ({ freeFor0_8 }) => freeFor0_8 ?? 0,
);

holdTo(
  'free sulphur dioxide for 0.5 mg/L',
  freeFor(0.5),
  ({ pH }) => 50 / share(pH),
  ({ freeFor0_5 }) => freeFor0_5,
);

/** The end of the interval that is not by pK 1.81. */
const byOiv = (pH: number, alcohol: number) => {
  const { value, low, high } = molecularSulphurDioxide({ free: 100, pH, alcohol });
  return low < value ? low : high;
};

holdTo(
  'molecular share at the other end of the interval, %',
  oivMolecular,
  ({ pH, alcohol }) => byOiv(pH, alcohol),
  ({ percent }) => percent,
);

holdTo(
  'the constant behind it',
  oivThermodynamic,
  ({ alcohol }) => 3.4 + Math.log10(byOiv(3.4, alcohol) / (100 - byOiv(3.4, alcohol))),
  ({ constant, lowering }) => constant - lowering,
);

holdTo(
  'grams of metabisulphite for a stabilising dose',
  customaryDose,
  ({ rise, litres }) => metabisulphiteFor({ rise, litres }),
  ({ grams }) => grams,
);
