import { describe, expect, test } from 'vitest';
import { Maker } from '../../tests/story/maker';
import { asOf } from './facts';
import { heldUpBy } from './held-up-by';
import { builtInSheets } from './kits';
import type { StepId } from './step';

const sheet = builtInSheets.find(({ id }) => id === 'hedge-lantern')!;

const held = ({ place, facts, now }: Maker) => {
  const by = heldUpBy(place, sheet, asOf(facts, now));
  return by && [by.question, by.verdict.because.code];
};
function before(step: StepId): Maker {
  const maker = new Maker(sheet);
  while (maker.act?.step !== step) {
    if (maker.act) maker.answer();
    else maker.prove(maker.place as never);
  }
  return maker;
}

describe('what holds a batch up', () => {
  test('is nothing at an act that nothing is asked before', () =>
    expect(held(new Maker(sheet))).toBeUndefined());

  test('is the gate that it stands at, while that is shut', () =>
    expect(held(new Maker(sheet).goTo('proving gas-free'))).toEqual(['proving gas-free', 'gas-not-tested']));

  test('is nothing at an open gate', () =>
    expect(held(new Maker(sheet).goTo('proving dry'))).toBeUndefined());

  test('is the check that had a temperature asked again, and only once it was given', () => {
    const maker = before('take wine temperature');
    expect(held(maker)).toBeUndefined();
    const { id } = maker.act!;
    maker.report({ type: 'temperature taken', how: 'touch', act: id, celsius: 9 as never });
    expect(held(maker)).toEqual(['warm enough to fine', 'fining-too-cold']);
  });

  test('is the check that had the topping up asked again', () => {
    const maker = before('measure gap');
    const { id } = maker.act!;
    maker.report({ type: 'gap measured', how: 'touch', act: id, millimetres: 90 });
    expect([maker.act?.id, held(maker)]).toEqual(['top up 2', ['topped up', 'gap-too-wide']]);
  });

  test('is nothing where the batch has ended', () =>
    expect(heldUpBy('finished', sheet, new Maker(sheet).facts)).toBeUndefined());
});
