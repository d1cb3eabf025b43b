import fc from 'fast-check';
import { SHEET_FORMAT, type KitSheet, type Sachet } from '../../src/procedure/kit-sheet';
import { parseKitSheet } from '../../src/procedure/parse-kit-sheet';

const thousandths = (lowest: number, highest: number) =>
  fc
    .integer({ min: Math.round(lowest * 1000), max: Math.round(highest * 1000) })
    .map((value) => value / 1000);

type Kind = Pick<Sachet, 'id' | 'contents' | 'when'>;

const BENTONITE: Kind[] = [{ id: 'bentonite', contents: ['bentonite'], when: 'mix' }];
const OAK: Kind[] = (['mix', 'ferment', 'clear'] as const).map((when) => ({
  id: 'oak',
  contents: ['oak'],
  when,
}));
const NUTRIENT: Kind[] = [{ id: 'nutrient', contents: ['nutrient'], when: 'ferment' }];
const FININGS: Kind[] = [
  { id: 'finings-a', contents: ['silica finings'], when: 'fine' },
  { id: 'finings-b', contents: ['shellfish finings'], when: 'fine' },
];
const SULPHITE: Kind = { id: 'sulphite', contents: ['sulphite'], when: 'stabilise' };
const SORBATE: Kind = { id: 'sorbate', contents: ['sorbate'], when: 'stabilise' };
const BOTH: Kind = { id: 'both', contents: ['sulphite', 'sorbate'], when: 'stabilise' };
const SWEETENING: Kind = { id: 'sweetening', contents: ['sweetening pack'], when: 'fine' };
const AT_BOTTLING: Kind = { id: 'last-sulphite', contents: ['sulphite'], when: 'bottle' };

/** What holds the wine, and whether it may be sweetened behind that. */
const stabilisers = fc.constantFrom<Kind[]>(
  [],
  [SULPHITE],
  [SULPHITE, SORBATE],
  [BOTH],
  [SULPHITE, SORBATE, SWEETENING],
  [BOTH, SWEETENING],
);

const kinds = fc
  .tuple(
    fc.subarray(BENTONITE),
    fc.subarray(OAK, { maxLength: 1 }),
    fc.subarray(NUTRIENT),
    stabilisers,
    fc.subarray(FININGS),
    fc.subarray([AT_BOTTLING]),
  )
  .map((groups): Kind[] => [{ id: 'yeast', contents: ['yeast'], when: 'pitch' }, ...groups.flat()]);

const sachets = fc
  .tuple(kinds, fc.constantFrom(0, 30), fc.constantFrom(0, 60))
  .map(([chosen, stirSeconds, gapMinutes]) =>
    chosen.map((kind, index): Sachet => ({
      ...kind,
      printed: `Sachet ${kind.id}`,
      count: 1,
      order: index + 1,
      dissolveFirst: false,
      stirSeconds,
      gapMinutes: kind.when === 'fine' ? gapMinutes : 0,
    })),
  );

const moves = fc.subarray<KitSheet['moves'][number]>([
  { when: 'early', atGravity: 1.01 },
  { when: 'dry' },
  { when: 'clear' },
]);

/** Any kit sheet that the authoring door lets through. */
export const anySheet: fc.Arbitrary<KitSheet> = fc
  .record({
    start: fc
      .tuple(thousandths(1.03, 1.1), thousandths(0, 0.02))
      .map(([lowest, width]) => ({ lowest, highest: lowest + width })),
    moves,
    sediment: fc.constantFrom('stir up', 'leave'),
    dry: fc.record({
      limit: fc.option(thousandths(0.985, 1), { nil: undefined }),
      readings: fc.integer({ min: 1, max: 4 }),
      hoursApart: fc.constantFrom(0, 24, 48, 72, 120),
      minimumDays: fc.integer({ min: 4, max: 20 }),
    }),
    wineAtLeast: fc.integer({ min: 10, max: 21 }),
    sachets,
    reserveLitres: fc.option(fc.constant(2), { nil: undefined }),
    degas: fc.record({
      seconds: fc.constantFrom(60, 300),
      reverseSeconds: fc.constant(30),
      rounds: fc.integer({ min: 1, max: 3 }),
      first: fc.boolean(),
    }),
    clearingDays: fc.integer({ min: 3, max: 30 }),
    closure: fc.constantFrom('cork', 'screw cap'),
  })
  .map(({ wineAtLeast, closure, ...rest }) => {
    const given = JSON.parse(
      JSON.stringify({
        format: SHEET_FORMAT,
        version: 1,
        id: 'any',
        edition: '1',
        language: 'en',
        name: 'Any Kit',
        sources: {},
        wine: { style: 'any', colour: 'white', hue: 90 },
        batchLitres: 23,
        firstWaterLitres: 3,
        temperature: { pitchLowest: 18, pitchHighest: 26, wineAtLeast },
        finingAtLeast: 16,
        stopperMillimetres: 25,
        bottle: { millilitres: 750, closure },
        notes: [],
        ...rest,
      }),
    ) as unknown;
    const parsed = parseKitSheet(given);
    if (!parsed.ok)
      throw new Error(`the generator made a sheet that is refused: ${JSON.stringify(parsed.problem)}`);
    return parsed.value;
  });
