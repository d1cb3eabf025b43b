type Spot = { x: number; y: number };

const WIDTH = 64;
const HEIGHT = 22;

/** Which spots can carry a label without touching another's: the last always does, then each that finds room. */
export function roomForLabels(spots: readonly Spot[]): boolean[] {
  const last = spots.at(-1);
  const labelled: Spot[] = last ? [last] : [];
  return spots.map((spot) => {
    const free = labelled.every(
      ({ x, y }) => Math.abs(x - spot.x) >= WIDTH || Math.abs(y - spot.y) >= HEIGHT,
    );
    if (free) labelled.push(spot);
    return free || spot === last;
  });
}
