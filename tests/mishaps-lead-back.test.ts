import { describe, expect, test } from 'vitest';
import { JOINABLE } from '../src/procedure/joinable';
import { joinsAt } from '../src/procedure/joining';
import { LEADS_BACK } from '../src/procedure/leads';
import { COURSE, GATES, type Gate, type Phase } from '../src/procedure/phase';
import { batchMachine } from '../src/workflow/batch-machine';

type Where = Phase | Gate;
type Edge = { by: string; place: Where; to: Where | undefined };

/** The machine's root transitions: those that hold wherever the batch stands. */
const rootEdges: Edge[] = [...batchMachine.root.transitions.values()]
  .flat()
  .map(({ eventType, actions, target }) => ({
    by: eventType,
    place: (actions[0] as unknown as { params: { place: Where } }).params.place,
    to: target?.[0]?.key as Where | undefined,
  }));

const order = (place: Where): number => COURSE.indexOf(place);

describe('what holds wherever the batch stands', () => {
  test('is a mishap, or joining', () =>
    expect([...new Set(rootEdges.map(({ by }) => by))]).toEqual(['mishap told', 'joined']));

  test('a mishap stays, or goes where the fixed table says', () => {
    const away = rootEdges.filter(({ by, to }) => by === 'mishap told' && to);
    const table = LEADS_BACK.flatMap(({ from, to }) => from.map((place) => `${place} → ${to}`));
    expect(new Set(away.map(({ place, to }) => `${place} → ${String(to)}`))).toEqual(new Set(table));
  });

  test('a mishap leads never on, so never past the gate ahead', () =>
    expect(
      rootEdges.filter(({ by, place, to }) => by === 'mishap told' && to && order(to) >= order(place)),
    ).toEqual([]));

  test('joining leads from the box to a place before the first gate that means something, or to closed bottles', () =>
    expect(
      rootEdges.filter(({ by }) => by === 'joined').map(({ place, to }) => `${place} → ${String(to)}`),
    ).toEqual([
      'prepare → mix',
      'prepare → ferment',
      'prepare → stand',
      'prepare → label',
      'prepare → wash up',
      'prepare → rest',
    ]));

  test('joining passes no gate but the one before the yeast, unless the wine is in bottles', () => {
    const passed = JOINABLE.map(joinsAt)
      .filter((to) => order(to) < order('stand'))
      .flatMap((to) => GATES.filter((gate) => order(gate) < order(to)));
    expect([...new Set(passed)]).toEqual(['proving mixed']);
  });
});
