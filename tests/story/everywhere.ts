import { COURSE } from '../../src/procedure/phase';
import type { Maker } from './maker';

/** A batch of Hedge Lantern at each place, and in between: one stabiliser in, bottles full but not counted, a sachet left out. */
export function everywhere(begins: () => Maker): Map<string, Maker> {
  const upTo = (place: Place, act: string): Maker => {
    const maker = begins().goTowards(place);
    while (!maker.act?.id.startsWith(act)) maker.answer();
    return maker;
  };
  const without = (sachet: string, place: Place): Maker => {
    const maker = begins().goTowards('ferment');
    maker.report({ type: 'left out', how: 'key', sachet, reason: 'wanted it without' });
    return maker.goTowards(place);
  };
  return new Map<string, Maker>([
    ...COURSE.map((place) => [place, begins().goTowards(place)] as const).filter(
      ([place, maker]) => maker.place === place,
    ),
    ['stabilise, one in', upTo('stabilise', 'add sachet sorbate')],
    ['bottle, filled', upTo('bottle', 'count filled')],
    ['degas, no sorbate', without('sorbate', 'degas')],
    ['clear, no finings', without('finings', 'clear')],
  ]);
}

type Place = (typeof COURSE)[number];
