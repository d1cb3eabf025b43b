import type { Act, StepId } from '../procedure/step';

/** Minutes that a step usually takes, beside its clock. Judgement from common practice; rounded when it is said. */
const MINUTES: Partial<Record<StepId, number>> = {
  'lay out sachets': 5,
  'check hydrometer': 5,
  'measure brim': 5,
  'wash gear': 20,
  'rinse gear': 5,
  'pour juice': 5,
  'fill to mark': 12,
  'read start': 4,
  'read on the way': 4,
  'read for the move': 4,
  'read towards dry': 4,
  'read baseline': 4,
  'sanitise again': 15,
  'siphon off': 15,
  'draw reserve': 5,
  'sanitise bottles': 30,
  'fill and close': 75,
  'label bottles': 30,
  'wash up gear': 20,
  'lay down': 10,
};
const OTHERWISE = 2;

/** Minutes to reckon with for one act, its clock included. */
export const minutesFor = (act: Act): number =>
  (MINUTES[act.step] ?? OTHERWISE) + (act.kind === 'stir' || act.kind === 'timer' ? act.seconds / 60 : 0);
