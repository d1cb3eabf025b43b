import type { Litres } from '../domain/unit';
import type { Facts } from './facts';
import type { KitSheet, Sachet } from './kit-sheet';
import { sachetsFor } from './limits';
import type { Act, StepId } from './step';

type Base = Pick<Act, 'id' | 'step' | 'nth' | 'done'>;

/** What every act has. The id is the step and what tells it from its like: a number from 1, or a sachet. */
export function base(facts: Facts, step: StepId, nth = 1, of: string = String(nth)): Base {
  const id = `${step} ${of}`;
  return { id, step, nth, done: id in facts.done };
}

/** Something to do, answered by "that is done". */
export const toDo = (facts: Facts, step: StepId, nth = 1): Act => ({ ...base(facts, step, nth), kind: 'do' });

/** Something to do with so many litres. */
export const toDoWith = (facts: Facts, step: StepId, litres: number, nth = 1): Act => ({
  ...toDo(facts, step, nth),
  litres: litres as Litres,
});

/** A stir by the clock. */
export const toStir = (
  facts: Facts,
  step: StepId,
  seconds: number,
  nth = 1,
  reverseSeconds?: number,
): Act => ({
  ...base(facts, step, nth),
  kind: 'stir',
  seconds,
  ...(reverseSeconds === undefined ? {} : { reverseSeconds }),
});

/** A sachet's acts: it goes in, it is stirred in, and it gets its time before the next. */
export function addingActs(facts: Facts, sachet: Sachet, rules: Partial<Act> = {}): Act[] {
  const adding = { ...base(facts, 'add sachet', 1, sachet.id), kind: 'add', sachet, ...rules } as Act;
  const stir: Act = {
    ...base(facts, 'stir in', 1, sachet.id),
    kind: 'stir',
    seconds: sachet.stirSeconds,
    sachet,
  };
  const wait: Act = {
    ...base(facts, 'wait after', 1, sachet.id),
    kind: 'timer',
    seconds: sachet.gapMinutes * 60,
    sachet,
  };
  return [adding, ...(sachet.stirSeconds > 0 ? [stir] : []), ...(sachet.gapMinutes > 0 ? [wait] : [])];
}

/** The acts of all sachets that a sheet puts into one phase, in its order. */
export const addingActsFor = (
  sheet: KitSheet,
  facts: Facts,
  when: Sachet['when'],
  rules: Partial<Act> = {},
): Act[] => sachetsFor(sheet, when).flatMap((sachet) => addingActs(facts, sachet, rules));
