/** What a sachet can hold, and the phases of the wine that it may go into. Where things go follows from what they are. */
export const MAY_GO = {
  bentonite: ['mix', 'fine'],
  yeast: ['pitch'],
  nutrient: ['mix', 'ferment'],
  oak: ['mix', 'ferment', 'clear'],
  sulphite: ['stabilise', 'bottle'],
  sorbate: ['stabilise'],
  'silica finings': ['fine'],
  'shellfish finings': ['fine'],
  'fish finings': ['fine'],
  'gelatine finings': ['fine'],
  'sweetening pack': ['fine'],
} as const;

export type Contents = keyof typeof MAY_GO;

/** The phases that a sheet may name for a sachet. */
export type AddingPhase = (typeof MAY_GO)[Contents][number];

export const CONTENTS = Object.keys(MAY_GO) as [Contents, ...Contents[]];

/** What holds the wine once it is dry. */
export const isStabiliser = (contents: readonly Contents[]): boolean =>
  contents.includes('sulphite') || contents.includes('sorbate');

/** The phases that all of a sachet's contents may go into. */
export const phasesFor = (contents: readonly Contents[]): AddingPhase[] =>
  contents
    .map((one): readonly AddingPhase[] => MAY_GO[one])
    .reduce<AddingPhase[]>(
      (common, phases) => common.filter((phase) => phases.includes(phase)),
      [...new Set(Object.values(MAY_GO).flat())],
    );
