import { addingActsFor, base, toStir } from '../act';
import type { Facts } from '../facts';
import type { KitSheet } from '../kit-sheet';
import { stabilisersOf } from '../limits';
import type { Act } from '../step';
import { stirsOutGas } from './degas';

/**
 * A knock of the surface before any powder; a rush of gas is stirred out first and the surface knocked again. Where the
 * sheet wants the gas out before the powders, it goes first. Every stabiliser in hand, then one by one, each sealed.
 */
export const stabilise = (sheet: KitSheet, facts: Facts): Act[] => [
  ...(sheet.degas.first ? stirsOutGas(sheet, facts) : []),
  ...knocks(sheet, facts),
  ...(stabilisersOf(sheet).length > 0 ? [inHand(sheet, facts)] : []),
  ...addingActsFor(sheet, facts, 'stabilise', { check: 'may stabilise', sealed: true }),
];

function knocks(sheet: KitSheet, facts: Facts): Act[] {
  const answers = facts.judgements.filter(({ what }) => what === 'rush');
  const rushes = answers.filter(({ yes }) => yes).length;
  const calm = answers.at(-1)?.yes === false;
  const stirs = Array.from({ length: rushes }, (_, index) =>
    toStir(facts, 'stir out gas', sheet.degas.seconds, KNOCK_STIRS_FROM + index, sheet.degas.reverseSeconds),
  );
  return [
    ...stirs,
    { ...base(facts, 'knock the surface', answers.length + 1), kind: 'judge', what: 'rush', done: calm },
  ];
}

/** Numbers of the stirs that a knock calls for, apart from the sheet's own rounds. */
const KNOCK_STIRS_FROM = 101;

const inHand = (sheet: KitSheet, facts: Facts): Act => ({
  ...base(facts, 'stabilisers in hand'),
  kind: 'account',
  sachets: stabilisersOf(sheet),
});
