import { describe, expect, test } from 'vitest';
import { ENDS, GATES, PHASES, type Gate, type Phase, type Place } from '../src/procedure/phase';
import { batchMachine } from '../src/workflow/batch-machine';
import { REMEDIES } from '../src/workflow/remedies';

type Edge = { from: string; to: string; by: string; guard: string | undefined };

/** Every edge between two places, by event or by itself, except those that end the batch. */
const edges: Edge[] = Object.values(batchMachine.states)
  .flatMap((node) => [...node.transitions.values(), node.always ?? []].flat())
  .flatMap(({ source, target = [], eventType, guard }) =>
    target.map((to) => ({
      from: source.key,
      to: to.key,
      by: eventType,
      guard: (guard as { type: string } | undefined)?.type,
    })),
  )
  .filter(({ from, to, by }) => from !== to && by !== 'ended');

const forward = ({ from, to }: Edge): boolean => order(to) > order(from);
const order = (place: string): number => [...COURSE_ORDER, 'finished'].indexOf(place);
const COURSE_ORDER: string[] = Object.keys(batchMachine.states);

/** Places that can be reached from a start when one place is taken out of the map. */
function reachableWithout(removed: Place): Set<string> {
  const reached = new Set<string>(['prepare']);
  for (let grown = -1; grown !== reached.size;) {
    grown = reached.size;
    for (const { from, to } of edges) if (reached.has(from) && to !== removed) reached.add(to);
  }
  return reached;
}

describe('the procedure', () => {
  test('has one way forward out of every phase and every gate', () => {
    const ways = [...PHASES, ...GATES].map(
      (place) => edges.filter((edge) => edge.from === place && forward(edge)).length,
    );
    expect(ways).toEqual([...PHASES, ...GATES].map(() => 1));
  });

  test.each(GATES)('leaves %s forwards only by passing it, under its guard', (gate) =>
    expect(edges.filter((edge) => edge.from === gate && forward(edge))).toMatchObject([
      { by: 'gate passed', guard: 'accepted' },
    ]),
  );

  test.each<[phase: Phase, gate: Gate]>([
    ['pitch', 'proving mixed'],
    ['rack', 'proving dry'],
    ['stabilise', 'proving dry'],
    ['fine', 'proving gas-free'],
    ['bottle', 'proving clear'],
    ['bottle', 'proving still'],
  ])('does not reach %s with %s taken out', (phase, gate) =>
    expect(reachableWithout(gate)).not.toContain(phase),
  );

  test('comes into stabilise from rack alone, and into rack from the dryness gate alone', () =>
    expect(
      (['stabilise', 'rack'] as const).map((phase) =>
        edges.filter(({ to }) => to === phase).map(({ from }) => from),
      ),
    ).toEqual([['rack'], ['proving dry']]));

  test('comes into bottle from the last gate alone', () =>
    expect(edges.filter(({ to }) => to === 'bottle').map(({ from, by }) => ({ from, by }))).toEqual([
      { from: 'proving still', by: 'gate passed' },
    ]));

  test('goes back only by the remedies table, or to the gate whose verdict has shut', () =>
    expect(
      edges
        .filter((edge) => !forward(edge))
        .map(({ from, to, guard }) => `${from} → ${to} (${String(guard)})`)
        .toSorted(),
    ).toEqual(
      [
        ...REMEDIES.map(({ gate, to }) => `${gate} → ${to} (sent back for)`),
        'stabilise → proving dry (act sealed)',
        'fine → proving dry (act sealed)',
        'bottle → proving still (act sealed)',
      ].toSorted(),
    ));

  test('has these ways back and no others', () =>
    expect(REMEDIES.map(({ gate, clause, to }) => `${gate}, ${clause} → ${to}`)).toEqual([
      'proving mixed, under-stirred → mix',
      'proving mixed, no-start-reading → mix',
      'proving mixed, start-outside → mix',
      'proving gas-free, gassy → degas',
      'proving clear, cloudy → clear',
      'proving still, still-moving → ferment',
      'proving still, gassy → degas',
      'proving still, no-baseline → top up',
      'proving still, dryness-in-doubt → top up',
    ]));

  test('has no place to stand but its phases, gates and honest ends', () =>
    expect(Object.keys(batchMachine.states).toSorted()).toEqual([...PHASES, ...GATES, ...ENDS].toSorted()));
});
