import { alcoholByMassFromVolume } from '../../src/domain/sums/alcohol-by-mass-from-volume';
import { alcoholFromGravity } from '../../src/domain/sums/alcohol-from-gravity';
import { blend } from '../../src/domain/sums/blend';
import { gravityFromBrix } from '../../src/domain/sums/gravity-from-brix';
import { balling } from '../../src/domain/sums/ground/balling';
import { tabarie } from '../../src/domain/sums/ground/tabarie';
import tables from './data/alcohol.json';
import bottles from './data/bottles.json';
import { holdTo } from './hold-to';

const { exciseTable, brews, duncanActon } = tables;

holdTo(
  '% vol of a fall to water',
  exciseTable,
  ({ fall }) =>
    alcoholFromGravity({ start: exciseTable.finish + fall / 1000, finish: exciseTable.finish }).value,
  ({ fall, factor }) => fall * factor,
);

holdTo(
  'alcohol by mass of a brew',
  brews,
  ({ original, apparent }) => balling(gravityFromBrix(original), gravityFromBrix(apparent)).alcohol,
  ({ byMass }) => byMass,
);

holdTo(
  'real extract of a brew',
  { ...brews, tolerance: 0.2 },
  ({ original, apparent }) => balling(gravityFromBrix(original), gravityFromBrix(apparent)).real,
  ({ real }) => real,
);

holdTo(
  '% vol by an amateur rule',
  duncanActon,
  (drop) => alcoholFromGravity(drop).value,
  ({ start, finish }) => ((start - finish) * 1000) / (7.75 - (3 * (start - 1) * 1000) / 800),
);

holdTo(
  'gravity of a wine from its alcohol and extract',
  tables.tabarie,
  ({ alcohol, extract, gravity }) =>
    tabarie({ alcohol: alcoholByMassFromVolume(alcohol) / 100, extract: extract / (gravity * 998.2) }, 20),
  ({ gravity }) => gravity,
);

holdTo(
  '% vol of a sweetened kit above the middle of its range',
  { ...bottles.sweetKit, tolerance: 1 },
  ({ start, finish, litres, packLitres }) => {
    const { value: alcohol } = alcoholFromGravity({ start, finish });
    return blend([
      { litres, gravity: finish, alcohol },
      { litres: packLitres, gravity: 1.3 },
    ]).alcohol;
  },
  ({ lowest, highest }) => (lowest + highest) / 2,
);
