import type { Mishap } from '../../procedure/mishap';
import type { Act, StepId } from '../../procedure/step';

/** The drawings that an act can have. */
export type PictureName =
  | 'reading'
  | 'thermometer'
  | 'tub'
  | 'bottles'
  | 'siphon'
  | 'reserve'
  | 'neck'
  | 'airlock'
  | 'foam'
  | 'rush'
  | 'torch'
  | 'shake'
  | 'wine';

const BY_STEP: Partial<Record<StepId, PictureName>> = {
  'wash gear': 'tub',
  'rinse gear': 'tub',
  'mix sanitiser': 'tub',
  'sanitiser contact': 'tub',
  'drain gear': 'tub',
  'sanitise again': 'tub',
  'wash up gear': 'tub',
  'close with airlock': 'airlock',
  'look for life': 'foam',
  'knock the surface': 'rush',
  'siphon off': 'siphon',
  'draw reserve': 'reserve',
  'return reserve': 'reserve',
  'top up': 'neck',
  'measure gap': 'neck',
  'look through the wine': 'torch',
  'count bottles': 'bottles',
  'sanitise bottles': 'bottles',
  'fill and close': 'bottles',
  'count filled': 'bottles',
  'stand upright': 'bottles',
  'label bottles': 'bottles',
  'lay down': 'bottles',
  'look at closures': 'bottles',
  'first taste': 'bottles',
};

const BY_KIND: Partial<Record<Act['kind'], PictureName>> = {
  reading: 'reading',
  instrument: 'reading',
  temperature: 'thermometer',
};

/** The drawing that goes with an act: its step's own, else its kind's; the wine in its vessel goes with all others. */
export const pictureOf = ({ step, kind }: Pick<Act, 'step' | 'kind'>): PictureName =>
  BY_STEP[step] ?? BY_KIND[kind] ?? 'wine';

const BY_MISHAP: Partial<Record<Mishap, PictureName>> = {
  'silent airlock': 'airlock',
  'airlock dry': 'airlock',
  'airlock sucked in': 'airlock',
};

/** The drawing that goes with what went wrong, where one tells more than words. */
export const pictureOfMishap = (mishap: Mishap): PictureName | undefined => BY_MISHAP[mishap];
