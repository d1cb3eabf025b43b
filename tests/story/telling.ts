import type { Litres } from '../../src/domain/unit';
import { sachetsNow } from '../../src/procedure/can-be-told';
import { MISHAPS, type Mishap } from '../../src/procedure/mishap';
import { litresNow } from '../../src/procedure/facts';
import type { Report } from '../../src/workflow/batch-event';
import type { Maker } from './maker';

export type Telling = Extract<Report, { type: 'mishap told' }>;

/** A mishap as it would be told where the batch stands: once for every sachet that it can be about, with litres where they are asked for. */
export function tellingsOf(maker: Maker, mishap: Mishap): Telling[] {
  const { asks, mayTell, change } = MISHAPS[mishap];
  const told: Telling = { type: 'mishap told', how: 'key', mishap };
  if (asks === 'sachet')
    return sachetsNow(maker.sheet, maker.facts, mishap).map(({ id }) => ({ ...told, sachet: id }));
  const known = change === 'filled anew' && maker.facts.pitched !== undefined;
  if (asks === 'litres' || known) return [{ ...told, litres: litresOf(maker, mishap) }];
  return mayTell === 'litres' && change === 'litres lost' ? [told, { ...told, litres: 1 as Litres }] : [told];
}

const litresOf = (maker: Maker, mishap: Mishap): Litres =>
  (MISHAPS[mishap].change === 'filled anew' ? litresNow(maker.facts) - 1 : 1) as Litres;
