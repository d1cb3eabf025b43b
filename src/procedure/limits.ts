import { stricterFinish, type Finish } from '../domain/gates/finish';
import { stricterPitch, type PitchRange } from '../domain/gates/must-warm-enough';
import type { StartRange } from '../domain/gates/must-mixed';
import { asGravity, type Gravity } from '../domain/gravity';
import type { Celsius } from '../domain/unit';
import { isStabiliser } from './contents';
import type { KitSheet, Sachet } from './kit-sheet';

/**
 * The sheet without what the maker left out. Sorbate never stays without its sulphite, and nothing sweet without sorbate:
 * from then on the batch is held to what a sheet without them is held to.
 */
export function inUse(sheet: KitSheet, leftOut: Readonly<Record<string, string>>): KitSheet {
  if (Object.keys(leftOut).length === 0) return sheet;
  const kept = sheet.sachets.filter(({ id }) => !(id in leftOut));
  const sulphite = kept.some(({ contents, when }) => contents.includes('sulphite') && when === 'stabilise');
  const paired = kept.filter(({ contents }) => sulphite || !contents.includes('sorbate'));
  const sorbate = paired.some(({ contents }) => contents.includes('sorbate'));
  return {
    ...sheet,
    sachets: paired.filter(({ contents }) => sorbate || !contents.includes('sweetening pack')),
  };
}

/** The numbers of a sheet as the gates take them: typed, and the stricter of house and sheet where both speak. */
export const finishOf = ({ dry, temperature, sachets }: KitSheet): Finish =>
  stricterFinish({
    limit: dry.limit === undefined ? undefined : asGravity(dry.limit),
    readings: dry.readings,
    hoursApart: dry.hoursApart,
    minimumDays: dry.minimumDays,
    wineAtLeast: temperature.wineAtLeast as Celsius,
    hasSorbate: sachets.some(({ contents }) => contents.includes('sorbate')),
  });

export const pitchRangeOf = ({ temperature }: KitSheet): PitchRange =>
  stricterPitch({ lowest: temperature.pitchLowest as Celsius, highest: temperature.pitchHighest as Celsius });

export const startRangeOf = ({ start }: KitSheet): StartRange => ({
  lowest: asGravity(start.lowest),
  highest: asGravity(start.highest),
});

/** The gravity at or below which the wine is moved early, where the sheet moves it early. */
export function earlyMoveAt({ moves }: KitSheet): Gravity | undefined {
  const early = moves.find((move) => move.when === 'early');
  return early && asGravity(early.atGravity);
}

export const moves = (sheet: KitSheet, when: KitSheet['moves'][number]['when']): boolean =>
  sheet.moves.some((move) => move.when === when);

/** The sachets of one phase in the order in which they are used. */
export const sachetsFor = ({ sachets }: KitSheet, when: Sachet['when']): Sachet[] =>
  sachets.filter((sachet) => sachet.when === when).toSorted((a, b) => a.order - b.order);

export const stabilisersOf = (sheet: KitSheet): Sachet[] =>
  sachetsFor(sheet, 'stabilise').filter(({ contents }) => isStabiliser(contents));

/** Thick concentrate lies at the bottom for a long time; common practice is three to five minutes, bottom to top. */
export const STIR_MUST_SECONDS = 240;
