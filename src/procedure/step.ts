import type { Judged } from '../domain/judgement';
import type { Instant, Litres } from '../domain/unit';
import type { Check } from './check';
import type { Sachet } from './kit-sheet';

/** The steps that the code knows. Each has its words in every language; a kit sheet fills them in. */
export const STEPS = [
  'lay out sachets',
  'check hydrometer',
  'measure brim',
  'choose a place',
  'wash gear',
  'rinse gear',
  'mix sanitiser',
  'sanitiser contact',
  'drain gear',
  'pour first water',
  'add sachet',
  'stir in',
  'wait after',
  'pour juice',
  'rinse juice bag',
  'fill to mark',
  'stir must',
  'read start',
  'take must temperature',
  'close with airlock',
  'look for life',
  'read on the way',
  'read for the move',
  'sanitise again',
  'measure vessel',
  'add held-back water',
  'siphon off',
  'measure wine',
  'read towards dry',
  'draw reserve',
  'stir up sediment',
  'leave sediment',
  'knock the surface',
  'make room for foam',
  'stabilisers in hand',
  'stir out gas',
  'warm for the gas',
  'take wine temperature',
  'return reserve',
  'top up',
  'measure gap',
  'read baseline',
  'leave to clear',
  'look through the wine',
  'count bottles',
  'sanitise bottles',
  'fill and close',
  'count filled',
  'stand upright',
  'label bottles',
  'wash up gear',
  'lay down',
  'look at closures',
  'first taste',
] as const;
export type StepId = (typeof STEPS)[number];

export const isStep = (given: string): given is StepId => (STEPS as readonly string[]).includes(given);

/** What an act asks for: `kind` picks the card, the voice, and the event that answers it. */
type Asks =
  | { kind: 'do' }
  | { kind: 'add'; sachet: Sachet }
  | { kind: 'stir'; seconds: number; reverseSeconds?: number; sachet?: Sachet }
  | { kind: 'timer'; seconds: number; sachet?: Sachet }
  | { kind: 'wait'; until: Instant }
  | { kind: 'reading' }
  | { kind: 'temperature'; of: 'must' | 'wine' }
  | { kind: 'litres'; of: 'brim' | 'vessel' | 'must' | 'wine' | 'room' | 'top-up'; suggested: Litres }
  | { kind: 'gap'; atMost: number }
  | { kind: 'bottles'; wanted: number }
  | { kind: 'filled'; wanted: number }
  | { kind: 'account'; sachets: readonly Sachet[] }
  | { kind: 'instrument' }
  | { kind: 'judge'; what: Judged };

/** One act of one batch. Its `id` is its own for good; `nth` counts repetitions of the same step from 1. */
export type Act = Asks & {
  id: string;
  step: StepId;
  nth: number;
  done: boolean;
  /** When the procedure asks for it, where it has a day of its own. */
  due?: Instant;
  /** What must be open before it counts as done; where it is `sealed`, before it may be entered at all. */
  check?: Check;
  sealed?: boolean;
  /** Litres that the act speaks of. */
  litres?: Litres;
};

/** Whether an act can be taken back. What is in the wine stays in it, and a filled bottle is a filled bottle. */
export const isIrreversible = ({ kind, step }: Act): boolean => kind === 'add' || step === 'fill and close';
