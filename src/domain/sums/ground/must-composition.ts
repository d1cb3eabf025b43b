/**
 * Acids, minerals and the like: their share of the extract of must, and how far it varies from must to must.
 */
export const NOT_SUGAR = 0.073;
export const NOT_SUGAR_VARIES = 0.018;
/**
 * Glycerol and acids that yeast makes, per gram fermented, as the sugar that would weigh on a hydrometer
 * alike.
 */
export const BY_PRODUCTS = 0.022;
export const BY_PRODUCTS_VARY = 0.01;
