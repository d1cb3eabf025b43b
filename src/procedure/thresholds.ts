import { asGravity, type Gravity } from '../domain/gravity';
import { resolutionOf } from '../domain/reading';
import type { Celsius } from '../domain/unit';
import type { Facts } from './facts';
import type { KitSheet } from './kit-sheet';
import { finishOf, inUse, startRangeOf, STIR_MUST_SECONDS } from './limits';
import type { Gate } from './phase';
import { readingsOfFerment } from './selections';

/** The numbers that gates hold a batch to. */
export type Threshold =
  | { what: 'dry limit' | 'lowest start' | 'highest start' | 'resolution'; value: Gravity }
  | { what: 'readings' | 'quiet tests' | 'clear looks'; value: number }
  | { what: 'hours apart'; value: number }
  | { what: 'wine at least'; value: Celsius }
  | { what: 'minimum days' | 'clearing days' | 'resting days'; value: number }
  | { what: 'stirred'; value: number };

/** Who a number comes from. Where both speak and differ, the stricter counts and `otherwise` is what the other says. */
export type Sourced = Threshold & { from: 'house' | 'sheet'; where?: string; otherwise?: number };

/** Every number that a gate judges by, with where it comes from. */
export const thresholds = (gate: Gate, sheet: KitSheet, facts: Facts): Sourced[] =>
  THRESHOLDS[gate](inUse(sheet, facts.leftOut), facts);

const THRESHOLDS: Record<Gate, (sheet: KitSheet, facts: Facts) => Sourced[]> = {
  'proving mixed': (sheet) => [
    sheets(sheet, 'start', { what: 'lowest start', value: startRangeOf(sheet).lowest }),
    sheets(sheet, 'start', { what: 'highest start', value: startRangeOf(sheet).highest }),
    house({ what: 'stirred', value: STIR_MUST_SECONDS }),
  ],
  'proving dry': toBeDry,
  'proving gas-free': () => [house({ what: 'quiet tests', value: QUIET_TESTS })],
  'proving clear': (sheet) => [
    sheets(sheet, 'clearingDays', { what: 'clearing days', value: sheet.clearingDays }),
    house({ what: 'clear looks', value: CLEAR_LOOKS }),
  ],
  'proving still': (_, { readings }) => [
    house({ what: 'resting days', value: RESTING_DAYS }),
    house({ what: 'resolution', value: resolutionOf(readings) }),
    house({ what: 'quiet tests', value: QUIET_TESTS }),
  ],
};

/** As `gas-gone`, `fallen-bright` and `wine-still` have them; the test beside holds them together. */
const QUIET_TESTS = 2;
const CLEAR_LOOKS = 2;
const RESTING_DAYS = 7;

function toBeDry(sheet: KitSheet, facts: Facts): Sourced[] {
  const { dry, temperature } = sheet;
  const said = finishOf(sheet);
  const alone = finishOf(saysNothing(sheet));
  const limit = dry.limit === undefined ? undefined : asGravity(dry.limit);
  return [
    stricter(sheet, 'dry.limit', { what: 'dry limit', value: said.limit }, alone.limit, limit),
    stricter(sheet, 'dry.readings', { what: 'readings', value: said.readings }, alone.readings, dry.readings),
    stricter(
      sheet,
      'dry.hoursApart',
      { what: 'hours apart', value: said.hoursApart },
      alone.hoursApart,
      dry.hoursApart,
    ),
    stricter(
      sheet,
      'temperature.wineAtLeast',
      { what: 'wine at least', value: said.wineAtLeast },
      alone.wineAtLeast,
      temperature.wineAtLeast,
    ),
    sheets(sheet, 'dry.minimumDays', { what: 'minimum days', value: said.minimumDays }),
    house({ what: 'resolution', value: resolutionOf(readingsOfFerment(facts)) }),
  ];
}

/** The laxest that a sheet can be in every number: what is asked then is the house's own. */
const saysNothing = (sheet: KitSheet): KitSheet => ({
  ...sheet,
  dry: { ...sheet.dry, readings: 1, hoursApart: 0, ...(sheet.dry.limit === undefined ? {} : { limit: 1 }) },
  temperature: { ...sheet.temperature, wineAtLeast: 0 },
});

const house = (threshold: Threshold): Sourced => ({ ...threshold, from: 'house' });

const sheets = (sheet: KitSheet, path: string, threshold: Threshold): Sourced => ({
  ...threshold,
  from: 'sheet',
  ...whereIn(sheet, path),
});

/** What counts is one of the two. Where the sheet says the same as the house, it is the sheet's, that the maker can look up. */
function stricter(
  sheet: KitSheet,
  path: string,
  threshold: Threshold,
  houses: number,
  its: number | undefined,
): Sourced {
  if (its === undefined) return house(threshold);
  const isSheets = threshold.value === its;
  const from = isSheets ? sheets(sheet, path, threshold) : house(threshold);
  return houses === its ? from : { ...from, otherwise: isSheets ? houses : its };
}

/** A sheet names the sources of its numbers by path, in full or by its last part. */
function whereIn({ sources }: KitSheet, path: string): { where?: string } {
  const where = sources[path] ?? sources[path.split('.').at(-1) ?? path];
  return where === undefined ? {} : { where };
}
