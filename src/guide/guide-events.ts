import type { Problem } from '../domain/problem';
import type { Instant } from '../domain/unit';
import type { Mishap } from '../procedure/mishap';
import type { Told } from '../workflow/journal';
import type { Command } from '../voice/commands';
import type { Tone } from '../voice/tones';
import type { Situation } from './situation';

/**
 * What the guide can report, and nothing else: it has no word for ending a batch, striking a reading, yielding a gate to
 * a reason, or deleting.
 */
export type GuideReport = Extract<
  Told,
  {
    type:
      | 'act done'
      | 'sachets accounted'
      | 'instrument checked'
      | 'litres measured'
      | 'gap measured'
      | 'bottles counted'
      | 'filled counted'
      | 'temperature taken'
      | 'reading taken'
      | 'judged'
      | 'clock started'
      | 'clock paused'
      | 'clock resumed'
      | 'clock extended'
      | 'gate passed'
      | 'sent back'
      | 'mishap told';
  }
>;

/** How a command came. */
export type How = 'touch' | 'key' | 'voice';

export type GuideCommand = { type: Command; how: How; at: Instant };

/** What the guide hears. Everything says when it was: the guide reads no clock. */
export type GuideEvent =
  | GuideCommand
  | { type: 'situation'; situation: Situation; at: Instant }
  /** A card was filled in. The guide reads back what matters before it counts. */
  | { type: 'draft'; report: GuideReport; at: Instant }
  /** The batch did not take the last report. */
  | { type: 'refused'; problem: Problem; at: Instant }
  /** A number was heard, on the maker's own scale. */
  | { type: 'number'; value: number; at: Instant }
  /** A command was heard, and not surely. */
  | { type: 'unsure'; command: Command; at: Instant }
  /** What went wrong was said. */
  | { type: 'mishap heard'; mishap: Mishap; at: Instant }
  /** The ears were turned on or off. */
  | { type: 'ears'; listening: boolean; at: Instant }
  /** The room is too loud, or what is said is not understood, time and again. */
  | { type: 'hard to hear'; why: HardToHear; at: Instant }
  /** All lines of an utterance are out, by ear or by caption. */
  | { type: 'said'; utterance: number; at: Instant }
  | { type: 'tick'; at: Instant };

/** Why the ears are of little use. */
export type HardToHear = 'noise' | 'misses';

/** A card that the guide asks the screen to open. */
export type Card = 'reading' | 'mishap' | 'recap';

/** What the guide gives out. An utterance takes the place of what is still being said. */
export type GuideOut =
  | { type: 'say'; utterance: number; lines: readonly string[] }
  | { type: 'tone'; tone: Tone }
  | { type: 'report'; report: GuideReport }
  | { type: 'show'; card: Card; mishap?: Mishap }
  /** What was not surely heard was meant: it is taken as if it had been. */
  | { type: 'meant'; command: GuideCommand }
  /** The maker wants no ears any more. */
  | { type: 'deafen' };

/** What the guide is about. */
export type Stage =
  | 'resting'
  | 'warning'
  | 'acting'
  | 'dictating'
  | 'reading back'
  | 'timing'
  | 'time up'
  | 'at a gate'
  | 'not due'
  | 'held'
  | 'looking back';
