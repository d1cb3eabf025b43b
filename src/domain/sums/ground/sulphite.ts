/** Mass of SO₂ held by each gram of K₂S₂O₅: 2 × 64.066 / 222.32. Old powder holds about 0.55. */
export const SULPHUR_DIOXIDE_FRACTION = (2 * 64.066) / 222.32;
