import type { Act, StepId } from '../procedure/step';

const TYPED: ReadonlySet<Act['kind']> = new Set([
  'reading',
  'temperature',
  'litres',
  'bottles',
  'filled',
  'gap',
  'instrument',
]);

/** Whether an act wants something typed. Filling to the mark does not: the mark is known, and is read back. */
export const isTyped = ({ kind, step }: Act): boolean => TYPED.has(kind) && step !== 'fill to mark';

const MEETS_WINE: ReadonlySet<StepId> = new Set<StepId>([
  'add sachet',
  'stir in',
  'pour juice',
  'rinse juice bag',
  'stir must',
  'read start',
  'take must temperature',
  'close with airlock',
  'read on the way',
  'read for the move',
  'siphon off',
  'read towards dry',
  'draw reserve',
  'add held-back water',
  'make room for foam',
  'stir up sediment',
  'knock the surface',
  'stir out gas',
  'take wine temperature',
  'return reserve',
  'top up',
  'read baseline',
  'fill and close',
]);

/** Whether hands or tools meet juice or wine, so that they must be clean again after a touch. */
export const meetsWine = ({ step }: Act): boolean => MEETS_WINE.has(step);
