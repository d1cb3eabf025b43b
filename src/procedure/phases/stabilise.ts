import { addingActsFor, base, toStir } from '../act';
import { foamRoomWanted } from '../../domain/gates/room-for-foam';
import type { Litres } from '../../domain/unit';
import { isIn, litresNow, type Facts } from '../facts';
import { judge } from '../judge';
import type { KitSheet } from '../kit-sheet';
import { stabilisersOf } from '../limits';
import { vesselNow } from '../selections';
import type { Act } from '../step';
import { stirsOutGas } from './degas';

/**
 * A knock of the surface before any powder; a rush of gas is stirred out first and the surface knocked again. Where the
 * sheet wants the gas out before the powders, it goes first. Every stabiliser in hand, then one by one, each sealed.
 */
export const stabilise = (sheet: KitSheet, facts: Facts): Act[] => [
  ...(sheet.degas.first ? stirsOutGas(sheet, facts) : []),
  ...roomForFoam(sheet, facts),
  ...knocks(sheet, facts),
  ...inHand(sheet, facts),
  ...addingActsFor(sheet, facts, 'stabilise', { check: 'may stabilise', sealed: true }),
];

/** Some of the wine is drawn off where the ledger sees no room for foam, and what stays is measured. */
function roomForFoam(sheet: KitSheet, facts: Facts): Act[] {
  if (stabilisersOf(sheet).some(({ id }) => isIn(facts, id)) || judge('room for foam', sheet, facts).open)
    return [];
  const wine = litresNow(facts);
  const suggested = Math.max(0, (vesselNow(facts) ?? wine) - foamRoomWanted(wine)) as Litres;
  const nth = facts.ledger.filter(({ cause }) => cause === 'drawn off').length + 1;
  return [
    { ...base(facts, 'make room for foam', nth), kind: 'litres', of: 'room', suggested, litres: suggested },
  ];
}

function knocks(sheet: KitSheet, facts: Facts): Act[] {
  const answers = facts.judgements.filter(({ what }) => what === 'rush');
  const rushes = answers.filter(({ yes }) => yes).length;
  const calm = answers.at(-1)?.yes === false;
  const stabilisers = stabilisersOf(sheet);
  if (answers.length === 0 && stabilisers.length > 0 && stabilisers.every(({ id }) => isIn(facts, id)))
    return [];
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

/** Those that are still to go in: none where all of them went in before their turn. */
function inHand(sheet: KitSheet, facts: Facts): Act[] {
  const sachets = stabilisersOf(sheet).filter(({ id }) => !wentInElsewhere(facts, id));
  return sachets.length > 0 ? [{ ...base(facts, 'stabilisers in hand'), kind: 'account', sachets }] : [];
}

const wentInElsewhere = ({ additions }: Facts, id: string): boolean =>
  additions.some(({ sachet, phase }) => sachet === id && phase !== 'stabilise');
