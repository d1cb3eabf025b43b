/** The next tenth up or down from a value, and never beyond its range. */
export function stepped(value: number, by: 1 | -1, { least, most }: { least: number; most: number }): number {
  return Math.min(most, Math.max(least, (Math.round(value * 10) + by) / 10));
}
