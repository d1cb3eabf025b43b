import { heldBack } from '../../domain/gates/box-complete';
import type { Litres } from '../../domain/unit';
import { addingActs, base, toDo, toDoWith, toStir } from '../act';
import { timesReturned, toldOf, type Facts } from '../facts';
import type { KitSheet } from '../kit-sheet';
import { sachetsFor, STIR_MUST_SECONDS } from '../limits';
import type { Act } from '../step';

/** Bentonite into the first water, juice, water to the mark, a long stir, and the start gravity. */
export function mix(sheet: KitSheet, facts: Facts): Act[] {
  const sachets = sachetsFor(sheet, 'mix');
  const isSlurry = ({ contents }: (typeof sachets)[number]): boolean => contents.includes('bentonite');
  const mark = (sheet.batchLitres - heldBack(facts.brim, sheet.batchLitres as Litres)) as Litres;
  return [
    toDoWith(facts, 'pour first water', sheet.firstWaterLitres),
    ...sachets.filter(isSlurry).flatMap((sachet) => addingActs(facts, sachet)),
    toDo(facts, 'pour juice'),
    toDo(facts, 'rinse juice bag'),
    ...sachets.filter((sachet) => !isSlurry(sachet)).flatMap((sachet) => addingActs(facts, sachet)),
    ...Array.from({ length: timesFilled(facts) }, (_, index): Act => ({
      ...base(facts, 'fill to mark', index + 1),
      kind: 'litres',
      of: 'must',
      suggested: mark,
      litres: mark,
    })),
    ...stirAndRead(facts),
  ];
}

/** Once, and measured again for each time that it was told to be filled wrongly before the yeast. */
const timesFilled = (facts: Facts): number =>
  1 +
  toldOf(facts, 'over-filled', 'under-filled', 'gallons confused').filter(
    ({ litres }) => litres === undefined,
  ).length;

/** Once, and again for each time the gate sent the must back. */
const stirAndRead = (facts: Facts): Act[] =>
  Array.from({ length: timesReturned(facts, 'proving mixed') + 1 }, (_, index) => index + 1).flatMap(
    (nth): Act[] => [
      toStir(facts, 'stir must', STIR_MUST_SECONDS, nth),
      { ...base(facts, 'read start', nth), kind: 'reading' },
    ],
  );
