/**
 * A sum's guard on its stated range: its callers parsed their values at a door, so anything else is a bug of
 * ours.
 */
export function requireWithin(name: string, value: number, lowest: number, highest: number): void {
  if (!(value >= lowest && value <= highest))
    throw new RangeError(`${name} must be ${lowest} to ${highest}, not ${value}`);
}
