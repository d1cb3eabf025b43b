import { polynomial } from './polynomial';

const WATER = [999.83952, 16.952577, -7.9905127e-3, -46.241757e-6, 105.84601e-9, -281.03006e-12];
const WATER_DIVISOR = 16.887236e-3;

/** One row per power of (t − 20)/100, each by rising powers of the mass fraction; pure water adds nothing. */
const SUGAR = [
  [0, 385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289],
  [0, -46.272, -7.172, 1.1597, 5.1126, 17.5254],
  [0, 59.7712, 7.2491, 12.363, -35.4791],
  [0, -47.2207, -21.6977, 27.6301],
  [0, 18.3184, 12.3081],
];

/**
 * Water's density as the sucrose polynomial has it: 0.003–0.004 kg/m³ below the best value, so never mix the
 * two.
 */
export const icumsaWater = (celsius: number): number =>
  polynomial(WATER, celsius) / (1 + WATER_DIVISOR * celsius);

/**
 * The sucrose polynomial without a guard. A slightly negative mass fraction is the "apparent extract" of a
 * liquid that alcohol has made lighter than water.
 */
export function icumsaDensity(massFraction: number, celsius: number): number {
  const warmth = (celsius - 20) / 100;
  let sugar = 0;
  for (let row = SUGAR.length - 1; row >= 0; row--)
    sugar = sugar * warmth + polynomial(SUGAR[row] ?? [], massFraction);
  return icumsaWater(celsius) + sugar;
}
