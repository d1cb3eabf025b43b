import fc from 'fast-check';

/** Any number between two. */
export const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Holds a property for five hundred draws, always the same ones. */
export const holds = <Given extends [unknown, ...unknown[]]>(
  given: { [Place in keyof Given]: fc.Arbitrary<Given[Place]> },
  property: (...given: Given) => void,
) =>
  fc.assert(
    fc.property(...given, (...drawn) => {
      property(...drawn);
    }),
    { seed: 20, numRuns: 500 },
  );
