import { expect, test } from 'vitest';
import { Maker } from '../../tests/story/maker';
import type { Celsius } from '../domain/unit';
import { asOf } from '../procedure/facts';
import { heldUpBy } from '../procedure/held-up-by';
import { builtInSheets } from '../procedure/kits';
import type { StepId } from '../procedure/step';
import type { Report } from '../workflow/batch-event';
import { obstacle } from './obstacle';

const sheet = builtInSheets.find(({ id }) => id === 'hedge-lantern')!;

const GIVEN_IN_VAIN: [StepId, (act: string) => Report, code: string][] = [
  [
    'take wine temperature',
    (act) => ({ type: 'temperature taken', how: 'touch', act, celsius: 9 as Celsius }),
    'fining-too-cold',
  ],
  ['measure gap', (act) => ({ type: 'gap measured', how: 'touch', act, millimetres: 90 }), 'gap-too-wide'],
];

test.each(GIVEN_IN_VAIN)(
  '%s, given and not enough: the guide says why as the screen does',
  (step, given, code) => {
    const maker = new Maker(sheet);
    while (maker.act?.step !== step) {
      if (maker.act) maker.answer();
      else maker.prove(maker.place as never);
    }
    maker.report(given(maker.act.id));
    const facts = asOf(maker.facts, maker.now);
    expect(obstacle(maker.act, sheet, facts)?.code).toBe(code);
    expect(heldUpBy(maker.place, sheet, facts)?.verdict.because.code).toBe(code);
  },
);
