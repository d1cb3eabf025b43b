/** Values in no order, how likely each is, and some shares: the values at or below which those shares of the likelihood lie. */
export function weightedQuantiles(
  values: readonly number[],
  weights: readonly number[],
  shares: readonly number[],
): number[] {
  const order = values.map((_, index) => index).sort((a, b) => at(values, a) - at(values, b));
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  return shares.map((share) => {
    let sum = 0;
    const found = order.find((index) => (sum += at(weights, index)) >= share * total);
    return at(values, found ?? order.at(-1) ?? 0);
  });
}

const at = (numbers: readonly number[], index: number): number => numbers[index] ?? Number.NaN;
