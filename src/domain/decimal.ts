/** A number as people type it, with a point or a comma; NaN when it is not one. */
export function decimal(given: string): number {
  const text = given.trim().replace(',', '.');
  return /^[+-]?(\d+\.?\d*|\.\d+)$/.test(text) ? Number(text) : Number.NaN;
}
