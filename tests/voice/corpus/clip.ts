import type { Command } from '../../../src/voice/commands';
import type { Asked } from './numbers';

/** What was said in a clip. */
export type Said =
  | { kind: 'command'; text: string; command: Command }
  | { kind: 'number'; text: string; asked: Asked; value: number }
  | { kind: 'talk'; text: string }
  | { kind: 'prose'; text: string };

/** A rendered recording. `file` is relative to the corpus's folder. */
export type Clip = Said & { file: string; speaker: string; slow: boolean; seconds: number };
