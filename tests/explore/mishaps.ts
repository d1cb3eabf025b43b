import { MINUTE } from '../../src/domain/calendar';
import type { Instant } from '../../src/domain/unit';
import { canBeTold } from '../../src/procedure/can-be-told';
import { isEnd } from '../../src/procedure/phase';
import { MISHAPS } from '../../src/procedure/mishap';
import type { Maker } from '../story/maker';
import { anotherHydrometer } from '../story/persevere';
import { tellingsOf, type Telling } from '../story/telling';
import type { Move } from './moves';

/** A minute after what was done or read last. */
const soon = ({ now: { at } }: Maker): Instant => (at + MINUTE) as Instant;

/** Whether it changes more than what is remembered: what changes nothing leads nowhere else. */
const changesSomething = ({ mishap, litres }: Telling): boolean => {
  const { change } = MISHAPS[mishap];
  return change !== 'nothing' && (change !== 'litres lost' || litres !== undefined);
};

/** Everything that can have gone wrong where the batch stands, once for every sachet that it can be about. */
export const mishaps = (maker: Maker): Move[] =>
  canBeTold(maker.sheet, maker.facts, maker.place)
    .flatMap((mishap) => tellingsOf(maker, mishap))
    .filter(changesSomething)
    .map((telling) => ({
      name: ['tells', telling.mishap, telling.sachet ?? [], telling.litres ?? []].flat().join(' '),
      at: soon(maker),
      costs: 'mishaps',
      deed: (of) => {
        of.report(telling);
      },
    }));

/** What follows a mishap: it was told by mistake, or another hydrometer takes the place of the one that is gone. */
export function afterMishaps(maker: Maker): Move[] {
  const at = soon(maker);
  if (isEnd(maker.place)) return [];
  const takesBack = maker.facts.mishaps.map(({ entry, mishap }): Move => ({
    name: `takes back ${mishap}`,
    at,
    deed: (of) => {
      of.report({ type: 'mishap struck', how: 'key', entry, reason: 'it was a mistake' });
    },
  }));
  const checksAnother: Move = {
    name: 'checks another hydrometer',
    at,
    deed: (of) => {
      of.report(anotherHydrometer);
    },
  };
  return [...takesBack, ...(maker.facts.instrument ? [] : [checksAnother])];
}
