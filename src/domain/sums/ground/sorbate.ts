/** Mass of sorbic acid held by each gram of potassium sorbate: 112.127 / 150.217. */
export const SORBIC_FRACTION = 112.127 / 150.217;
