/** A possible value and how likely it is. */
export type Weighted = { value: number; weight: number };

/** The value that a given share of the likelihood lies at or below; infinite values are allowed. */
export function weightedQuantiles(possible: readonly Weighted[], shares: readonly number[]): number[] {
  const sorted = possible.toSorted((a, b) => a.value - b.value);
  const total = sorted.reduce((sum, { weight }) => sum + weight, 0);
  return shares.map((share) => {
    let sum = 0;
    const found = sorted.find(({ weight }) => (sum += weight) >= share * total * (1 - 1e-12));
    return found?.value ?? Number.NaN;
  });
}
