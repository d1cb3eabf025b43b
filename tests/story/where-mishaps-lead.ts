import type { Mishap } from '../../src/procedure/mishap';

const FILLED_WRONGLY = ['proving mixed → mix', 'pitch → mix'];

/** What went in that nobody planned: sugar without a guard ferments; the rest is looked at where it matters. */
const WENT_IN = [
  'rack (sweetening) → ferment',
  'stabilise (sweetening) → ferment',
  'stabilise, one in (sorbate) → degas',
  'stabilise, one in (sweetening) → ferment',
  'stabilise, one in (finings) → proving dry',
  'degas, no sorbate (sweetening) → ferment',
  'clear, no finings (finings) → top up',
];

/** For the kit that has everything: where each mishap leads that does not leave the batch where it is. */
export const WHERE_MISHAPS_LEAD: Partial<Record<Mishap, readonly string[]>> = {
  'wrong sachet': WENT_IN,
  'wrapper too many': WENT_IN,
  'sweetening too early': [
    'rack → ferment',
    'stabilise → ferment',
    'stabilise, one in → ferment',
    'degas, no sorbate → ferment',
  ],
  'one of a pair': ['degas, no sorbate (sorbate) → proving dry'],
  'finings left out': ['clear, no finings (finings) → fine'],
  'forgot yeast': ['ferment → pitch'],
  'sachet still full': [
    'ferment (yeast) → pitch',
    'degas (sulphite) → proving dry',
    'degas (sorbate) → proving dry',
    'proving gas-free (sulphite) → proving dry',
    'proving gas-free (sorbate) → proving dry',
    'fine (sulphite) → proving dry',
    'fine (sorbate) → proving dry',
    'top up (sulphite) → proving dry',
    'top up (sorbate) → ferment',
    'top up (sweetening) → fine',
    'top up (finings) → fine',
    'clear (sulphite) → proving dry',
    'clear (sorbate) → ferment',
    'clear (sweetening) → fine',
    'clear (finings) → fine',
    'proving clear (sulphite) → proving dry',
    'proving clear (sorbate) → ferment',
    'proving clear (sweetening) → fine',
    'proving clear (finings) → fine',
    'proving still (sulphite) → proving dry',
    'proving still (sorbate) → ferment',
    'proving still (sweetening) → fine',
    'proving still (finings) → fine',
    'bottle (sulphite) → proving dry',
    // To ferment, and through it: baseline and last reading are later than the sugar, dry and unchanged.
    'bottle (sorbate) → proving dry',
    'bottle (sweetening) → fine',
    'bottle (finings) → fine',
    'degas, no sorbate (sulphite) → proving dry',
    'clear, no finings (sulphite) → proving dry',
    'clear, no finings (sorbate) → ferment',
    'clear, no finings (sweetening) → fine',
  ],
  'over-filled': FILLED_WRONGLY,
  'under-filled': FILLED_WRONGLY,
  'gallons confused': FILLED_WRONGLY,
  'topped up unasked': [
    'clear → top up',
    'proving clear → top up',
    'proving still → top up',
    'bottle → top up',
    'clear, no finings → top up',
  ],
  'sediment stirred up': ['proving still → proving clear', 'bottle → proving clear'],
  'poured back': [
    'stand → proving still',
    'label → proving still',
    'wash up → proving still',
    'rest → proving still',
    'bottle, filled → proving still',
  ],
};
