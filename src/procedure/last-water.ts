import { mixingTemperature } from '../domain/sums/mixing-temperature';
import { waterTemperatureFor, type WaterTemperature } from '../domain/sums/water-temperature-for';
import type { Celsius, Litres } from '../domain/unit';
import type { KitSheet } from './kit-sheet';

/** What stands in the vessel, the water that is still to come, how warm the batch should be, and the tap's own warmth. */
export type LastWater = {
  litres: Litres;
  celsius: Celsius;
  water: Litres;
  target: Celsius;
  tap?: Celsius | undefined;
};

/** The sums' thickest liquid; juice is thinner than that, whatever was typed. */
const THICKEST = 1.4;

/**
 * How warm the last water must be, and where the batch lands with water straight from the tap. All the sugar of the batch
 * is in the vessel already: thick juice warms more slowly than water.
 */
export function lastWater(
  { start }: KitSheet,
  { litres, celsius, water, target, tap }: LastWater,
): { needed: WaterTemperature; fromTap?: Celsius } {
  const mixed = (start.lowest + start.highest) / 2;
  const gravity = Math.min(THICKEST, 1 + ((mixed - 1) * (litres + water)) / litres);
  const inVessel = { litres, celsius, gravity };
  const needed = waterTemperatureFor({ parts: [inVessel], waterLitres: water, target });
  if (tap === undefined) return { needed };
  return { needed, fromTap: mixingTemperature([inVessel, { litres: water, celsius: tap }]) as Celsius };
}
