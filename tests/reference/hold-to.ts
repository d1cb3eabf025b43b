import { afterAll, describe, expect, test } from 'vitest';

/**
 * Published values, where they are from and how they were read, and how near a sum must come to them, and
 * why.
 */
export type Table<Row> = { source: string; read: string; tolerance: number; because: string; rows: Row[] };

/**
 * Holds a sum to every row of a table. `REPORT=1 npx vitest run tests/reference` also tells the worst
 * disagreement.
 */
export function holdTo<Row extends object>(
  what: string,
  table: Table<Row>,
  ours: (row: Row) => number,
  theirs: (row: Row) => number,
  tolerance = table.tolerance,
): void {
  let worst = 0;
  describe(`${what}, as in ${table.source} (${table.read}), within ${tolerance}: ${table.because}`, () => {
    test.each(table.rows.map((row) => ({ row, name: JSON.stringify(row) })))('$name', ({ row }) => {
      const off = ours(row) - theirs(row);
      worst = Math.max(worst, Math.abs(off));
      expect(Math.abs(off), `${ours(row)} here, ${theirs(row)} there`).toBeLessThanOrEqual(tolerance);
    });
    afterAll(() => {
      if (process.env['REPORT'])
        console.info(
          `${what} | ${table.source.slice(0, 70)} | worst ${worst.toPrecision(2)} of ${tolerance}`,
        );
    });
  });
}

/** A relative density as a balance in air has it (1.2 kg/m³), from two densities in vacuo. */
export const inAir = (density: number, water: number): number => (density - 1.2) / (water - 1.2);
