import { ethanolWaterDensity } from '../ethanol-water-density';
import { icumsaDensity, icumsaWater } from './icumsa-density';

/** Mass fractions of alcohol and of extract. */
export type Liquid = { alcohol: number; extract: number };

/**
 * Density of a wine or must relative to water at its own temperature, by Tabarié's relation: alcohol and
 * extract each shift it from that of their own water.
 */
export function tabarie({ alcohol, extract }: Liquid, celsius: number): number {
  const lighter = alcohol === 0 ? 1 : ethanolWaterDensity(alcohol, celsius) / ethanolWaterDensity(0, celsius);
  return extract === 0 ? lighter : lighter + icumsaDensity(extract, celsius) / icumsaWater(celsius) - 1;
}
