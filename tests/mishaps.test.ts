import { describe, expect, test } from 'vitest';
import { HOUR } from '../src/domain/calendar';
import type { Instant } from '../src/domain/unit';
import { canBeTold } from '../src/procedure/can-be-told';
import type { KitSheet } from '../src/procedure/kit-sheet';
import { builtInSheets } from '../src/procedure/kits';
import { LEADS_BACK } from '../src/procedure/leads';
import { MISHAP_IDS, type Mishap } from '../src/procedure/mishap';
import { COURSE, type Gate, type Phase } from '../src/procedure/phase';
import { replay } from '../src/workflow/replay';
import { everywhere } from './story/everywhere';
import { Maker } from './story/maker';
import { persevere } from './story/persevere';
import { tellingsOf, type Telling } from './story/telling';
import { WHERE_MISHAPS_LEAD } from './story/where-mishaps-lead';

const [hedge] = builtInSheets.filter(({ id }) => id === 'hedge-lantern') as [KitSheet];

type Where = Phase | Gate;

const makers = everywhere(() => new Maker(hedge));

const named = ({ mishap, sachet, litres }: Telling): string =>
  [mishap, ...(sachet ? [sachet] : []), ...(litres ? [`${String(litres)} l`] : [])].join(', ');

const everyCase = [...makers].flatMap(([where, maker]) =>
  canBeTold(hedge, maker.facts, maker.place).flatMap((mishap) =>
    tellingsOf(maker, mishap).map((telling) => ({ where, maker, telling, name: named(telling) })),
  ),
);

/** A mishap is told; where that leads, or why it is not taken. */
function told({ maker, telling }: { maker: Maker; telling: Telling }) {
  const after = maker.fork().wait(0.2);
  const problem = after.report(telling);
  return { after, problem: problem?.code, to: after.place };
}

describe('every mishap, at every place where it can be said', () => {
  test('is one of at least twenty-five, and each can be said somewhere', () => {
    expect(MISHAP_IDS.length).toBeGreaterThanOrEqual(25);
    expect(new Set(everyCase.map(({ telling }) => telling.mishap))).toEqual(new Set(MISHAP_IDS));
  });

  test.each(MISHAP_IDS)('%s leads where the table says', (mishap) => {
    const found = everyCase
      .filter(({ telling }) => telling.mishap === mishap)
      .map((each) => ({ ...each, ...told(each) }))
      .filter(({ maker, to }) => to !== maker.place)
      .map(({ where, telling, to }) => `${where}${telling.sachet ? ` (${telling.sachet})` : ''} → ${to}`);
    expect([...new Set(found)]).toEqual(WHERE_MISHAPS_LEAD[mishap] ?? []);
  });

  test('the fixed table leads only back', () => {
    const order = (place: string) => COURSE.indexOf(place as Where);
    expect(LEADS_BACK.filter(({ from, to }) => from.some((where) => order(to) >= order(where)))).toEqual([]);
  });

  test('is refused only where the journal says otherwise, and then changes nothing', () => {
    const refused = everyCase.map((each) => ({ ...each, ...told(each) })).filter(({ problem }) => problem);
    expect(refused.filter(({ after, maker }) => after.facts !== maker.facts)).toEqual([]);
    expect([
      ...new Set(refused.map(({ telling, problem }) => `${telling.mishap}: ${String(problem)}`)),
    ]).toEqual(['forgot bentonite: already-in', 'sachet still full: journal-says-otherwise']);
  });

  test('is not taken twice while it stays', () => {
    const taken = everyCase
      .map((each) => ({ ...each, ...told(each) }))
      .filter(({ to, maker, problem }) => to === maker.place && !problem)
      .flatMap(({ name, where, after, telling }) => (after.report(telling) ? [] : [`${where}: ${name}`]));
    expect(taken).toEqual([]);
  });
});

describe('no mishap loses a batch', () => {
  const lost = (mishap: Mishap): string[] =>
    everyCase
      .filter(({ telling }) => telling.mishap === mishap)
      .flatMap((each) => {
        const { after } = told(each);
        const problem = persevere(after);
        return problem ? [`${each.where}, ${each.name}: ${problem}`] : [];
      });

  test.each(MISHAP_IDS.filter((mishap) => mishap !== 'hydrometer in the wine'))(
    '%s: the batch still comes to its end',
    { timeout: 120_000 },
    (mishap) => expect(lost(mishap)).toEqual([]),
  );

  test('glass in the wine keeps it out of bottles, until it was told by mistake', () => {
    const maker = (makers.get('clear') as Maker).fork();
    expect(
      maker.report({ type: 'mishap told', how: 'key', mishap: 'hydrometer in the wine' }),
    ).toBeUndefined();
    const { entries } = maker.facts;
    expect(persevere(maker.fork())).toContain('proving still');
    const reason = 'every piece was found outside';
    maker.report({ type: 'mishap struck', how: 'key', entry: entries, reason });
    expect(persevere(maker)).toBeUndefined();
  });
});

test.each(builtInSheets)('a journal of $name with mishaps replays to the same state', (sheet) => {
  const maker = new Maker(sheet).goTo('ferment');
  const mishaps: Mishap[] = [
    'hydrometer broken',
    'foamed over',
    'moved too early',
    'past its date',
    'holiday',
  ];
  for (const mishap of mishaps) maker.report({ type: 'mishap told', how: 'key', mishap });
  persevere(maker);
  expect(maker.facts.mishaps.length).toBeGreaterThanOrEqual(4);
  expect(replay(maker.input, maker.journal)).toEqual({ snapshot: maker.snapshot });
});

test('sugar that is told to have gone in before the stabilisers has to ferment out, whenever it is told', () => {
  const maker = new Maker(hedge).goTo('degas');
  const sulphite = maker.facts.additions.find(({ contents }) => contents.includes('sulphite'))!;
  const before = (hours: number) => (sulphite.at - hours * HOUR) as Instant;
  const tell = (takenAt: Instant) => {
    const after = maker.fork().wait(0.2);
    after.report({
      type: 'mishap told',
      how: 'touch',
      mishap: 'wrong sachet',
      sachet: 'sweetening',
      takenAt,
    });
    return after;
  };
  const early = tell(before(30));
  expect(early.place).toBe('ferment');
  expect(early.facts.additions.at(-1)?.unguarded).toBe(true);
  expect(persevere(early)).toBeUndefined();
  expect(tell(maker.now.at).place).toBe('degas');
});
