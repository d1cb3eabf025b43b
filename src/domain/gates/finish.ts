import type { Gravity } from '../gravity';
import type { Celsius } from '../unit';

/** What "fermentation is over" means for one batch: in each number the stricter of the house and the kit sheet. */
export type Finish = {
  limit: Gravity;
  readings: number;
  hoursApart: number;
  wineAtLeast: Celsius;
  minimumDays: number;
};

/** What a sheet may say about it. A sheet without sorbate has nothing that holds the yeast back later. */
export type SheetFinish = {
  limit?: Gravity | undefined;
  readings: number;
  hoursApart: number;
  minimumDays: number;
  wineAtLeast: Celsius;
  hasSorbate: boolean;
};

const CEILING = 10_000 as Gravity;
const CEILING_UNNAMED_OR_WITHOUT_SORBATE = 9960 as Gravity;
const READINGS = 2;
const HOURS_APART = 48;
const WARM = 18 as Celsius;

/** The stricter of house and sheet, number by number: a sheet can tighten this gate and never loosen it. */
export function stricterFinish(sheet: SheetFinish): Finish {
  const ceiling =
    sheet.limit !== undefined && sheet.hasSorbate ? CEILING : CEILING_UNNAMED_OR_WITHOUT_SORBATE;
  return {
    limit: Math.min(sheet.limit ?? ceiling, ceiling) as Gravity,
    readings: Math.max(sheet.readings, READINGS),
    hoursApart: Math.max(sheet.hoursApart, HOURS_APART),
    wineAtLeast: Math.max(sheet.wineAtLeast, WARM) as Celsius,
    minimumDays: sheet.minimumDays,
  };
}
