import { polynomial } from './ground/polynomial';
import { requireWithin } from './ground/require-within';

const A = [
  998.20123, -192.9769495, 389.1238958, -1668.103923, 13522.15441, -88292.78388, 306287.4042, -613838.1234,
  747017.2998, -547846.1354, 223446.0334, -39032.85426,
];
const B = [0, -0.20618513, -0.0052682542, 3.6130013e-5, -3.8957702e-7, 7.169354e-9, -9.9739231e-11];
/** One row per power of (t − 20), the first power first, each by rising powers of the mass fraction. */
const C = [
  [
    0, 0.1693443461530087, -10.46914743455169, 71.96353469546523, -704.7478054272792, 3924.090430035045,
    -12101.64659068747, 22486.46550400788, -26055.62982188164, 18523.73922069467, -7420.201433430137,
    1285.617841998974,
  ],
  [
    0, -0.0119301300505701, 0.2517399633803461, -2.170575700536993, 13.53034988843029, -50.29988758547014,
    109.635566657757, -142.2753946421155, 108.043594285623, -44.14153236817392, 7.442971530188783,
  ],
  [
    0, -0.0006802995733503803, 0.01876837790289664, -0.2002561813734156, 1.02299296671922, -2.895696483903638,
    4.810060584300675, -4.672147440794683, 2.458043105903461, -0.5411227621436812,
  ],
  [0, 4.075376675622027e-6, -8.76305857347111e-6, 6.515031360099368e-6, -1.51578483698721e-6],
  [0, -2.788074354782409e-8, 1.345612883493354e-8],
];

/**
 * Density of ethanol mixed with water.
 * Units        mass fraction of ethanol and °C in; kg/m³ out.
 * Range        0–1, −20 to 40 °C.
 * Uncertainty  0.01 kg/m³ at the strength of wine; its water lies 0.005–0.006 kg/m³ below the best value, so
 *              a relative density is formed with `ethanolWaterDensity(0, t)`.
 * Errors       RangeError outside the range.
 * Source       OIML R 22 (1975), general formula, complete; Council Directive 76/766/EEC, annex.
 */
export function ethanolWaterDensity(massFraction: number, celsius: number): number {
  requireWithin('ethanol mass fraction', massFraction, 0, 1);
  requireWithin('mixture temperature', celsius, -20, 40);
  const warmth = celsius - 20;
  let both = 0;
  for (let row = C.length - 1; row >= 0; row--)
    both = (both + polynomial(C[row] ?? [], massFraction)) * warmth;
  return polynomial(A, massFraction) + polynomial(B, warmth) + both;
}
