import type { SheetFault } from '../domain/problem';
import { phasesFor, type Contents } from './contents';
import type { KitSheet, Sachet } from './kit-sheet';
import { printedDose } from './printed-dose';
import { isStep } from './step';

/** What a well-formed sheet may still get wrong: contradictions, and things put where they may not go. */
export const sheetFaults = (sheet: KitSheet): SheetFault[] => [
  ...ranges(sheet),
  ...sheet.sachets.flatMap(placement),
  ...repeated(sheet),
  ...company(sheet),
  ...doses(sheet),
  ...vessels(sheet),
  ...notes(sheet),
];

const has = ({ sachets }: KitSheet, contents: Contents): boolean =>
  sachets.some((sachet) => sachet.contents.includes(contents));

const fault = (path: string, given: unknown, rule: SheetFault['rule'], allowed?: string): SheetFault => ({
  path,
  given: String(given),
  rule,
  ...(allowed === undefined ? {} : { allowed }),
});

const ranges = ({ start, temperature }: KitSheet): SheetFault[] => [
  ...(start.lowest > start.highest
    ? [fault('start.lowest', start.lowest, 'lowest-above-highest', String(start.highest))]
    : []),
  ...(temperature.pitchLowest > temperature.pitchHighest
    ? [
        fault(
          'temperature.pitchLowest',
          temperature.pitchLowest,
          'lowest-above-highest',
          String(temperature.pitchHighest),
        ),
      ]
    : []),
];

function placement(sachet: Sachet, index: number): SheetFault[] {
  const allowed = phasesFor(sachet.contents);
  return allowed.includes(sachet.when)
    ? []
    : [fault(`sachets.${String(index)}.when`, sachet.when, 'may-not-go-there', allowed.join(', '))];
}

function repeated({ sachets, moves }: KitSheet): SheetFault[] {
  const again = (key: (sachet: Sachet) => string, path: string, rule: SheetFault['rule']): SheetFault[] =>
    sachets.flatMap((sachet, index) =>
      sachets.findIndex((other) => key(other) === key(sachet)) < index
        ? [fault(`sachets.${String(index)}.${path}`, path === 'order' ? sachet.order : sachet.id, rule)]
        : [],
    );
  const movedTwice = moves.flatMap((move, index) =>
    moves.findIndex(({ when }) => when === move.when) < index
      ? [fault(`moves.${String(index)}`, move.when, 'twice')]
      : [],
  );
  return [
    ...again(({ id }) => id, 'id', 'twice'),
    ...again(({ when, order }) => `${when} ${String(order)}`, 'order', 'order-twice'),
    ...movedTwice,
  ];
}

/** What never goes without what: yeast always, sulphite with sorbate, sorbate before anything sweet. */
const company = (sheet: KitSheet): SheetFault[] => [
  ...(has(sheet, 'yeast') ? [] : [fault('sachets', 'no yeast', 'no-yeast')]),
  ...(has(sheet, 'sweetening pack') && !has(sheet, 'sorbate')
    ? [fault('sachets', 'sweetening pack', 'sweetens-without-sorbate')]
    : []),
  ...(has(sheet, 'sorbate') && !sheet.sachets.some(sulphiteWithSorbate)
    ? [fault('sachets', 'sorbate', 'sorbate-without-sulphite')]
    : []),
];

const sulphiteWithSorbate = ({ contents, when }: Sachet): boolean =>
  contents.includes('sulphite') && when === 'stabilise';

const SULPHUR_DIOXIDE_AT_MOST = 150;
const SORBIC_ACID_AT_MOST = 400;

/** Only what is printed can be judged. */
function doses(sheet: KitSheet): SheetFault[] {
  const sulphurDioxide = printedDose(sheet, 'sulphite', sheet.batchLitres) ?? 0;
  const sorbicAcid = printedDose(sheet, 'sorbate', sheet.batchLitres) ?? 0;
  return [
    ...(sulphurDioxide > SULPHUR_DIOXIDE_AT_MOST
      ? [
          fault(
            'sachets',
            `${sulphurDioxide.toFixed(0)} mg/L`,
            'too-much-sulphite',
            `${String(SULPHUR_DIOXIDE_AT_MOST)} mg/L`,
          ),
        ]
      : []),
    ...(sorbicAcid > SORBIC_ACID_AT_MOST
      ? [
          fault(
            'sachets',
            `${sorbicAcid.toFixed(0)} mg/L`,
            'too-much-sorbate',
            `${String(SORBIC_ACID_AT_MOST)} mg/L`,
          ),
        ]
      : []),
  ];
}

const vessels = ({ reserveLitres = 0, batchLitres, firstWaterLitres }: KitSheet): SheetFault[] => [
  ...(reserveLitres > batchLitres / 4
    ? [fault('reserveLitres', reserveLitres, 'reserve-too-large', String(batchLitres / 4))]
    : []),
  ...(firstWaterLitres >= batchLitres
    ? [fault('firstWaterLitres', firstWaterLitres, 'outside', `< ${String(batchLitres)}`)]
    : []),
];

const notes = ({ notes }: KitSheet): SheetFault[] =>
  notes.flatMap(({ step }, index) =>
    isStep(step) ? [] : [fault(`notes.${String(index)}.step`, step, 'unknown-act')],
  );
