import { addingActs, base } from '../act';
import type { Facts } from '../facts';
import { judge } from '../judge';
import type { KitSheet } from '../kit-sheet';
import { sachetsFor } from '../limits';
import type { Act } from '../step';

/** The wine's warmth, the sweetening pack behind every stabiliser, and the finings in the sheet's order with their gaps. */
export function fine(sheet: KitSheet, facts: Facts): Act[] {
  const sachets = sachetsFor(sheet, 'fine');
  const begun = facts.additions.some(({ phase }) => phase === 'fine');
  return [
    {
      ...base(facts, 'take wine temperature'),
      kind: 'temperature',
      of: 'wine',
      done:
        begun || ('take wine temperature 1' in facts.done && judge('warm enough to fine', sheet, facts).open),
    },
    ...sachets.flatMap((sachet) =>
      sachet.contents.includes('sweetening pack')
        ? addingActs(facts, sachet, { check: 'may sweeten', sealed: true })
        : addingActs(facts, sachet),
    ),
  ];
}
