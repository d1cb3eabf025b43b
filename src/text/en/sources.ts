/** Who a number at a gate comes from: the stricter of the two speaks. */
type Source = 'house' | 'sheet';

/** `where` is what the sheet says of its own number: "leaflet, page 4". */
const from: Record<Source, (where?: string) => string> = {
  house: () => 'the house rule',
  sheet: (where) => (where === undefined ? 'your sheet' : `your sheet (${where})`),
};

/** Where the numbers at a gate come from. */
export const sources = {
  from,
  of: (number: string, source: string) => `${number}: ${source}`,
  stricter: (source: string) => `The stricter counts: ${source}.`,
};
