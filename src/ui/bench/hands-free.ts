import type { GuideContext } from '../../guide/guide-context';
import type { Card, GuideReport, How } from '../../guide/guide-events';
import type { Situation } from '../../guide/situation';
import type { Problem } from '../../domain/problem';
import type { Mishap } from '../../procedure/mishap';
import type { WakeState } from '../../timers/wake-lock';
import type { Command } from '../../voice/commands';
import type { Silence } from '../../voice/speech-queue';
import type { EarShown } from './ear-shown';

/** Whether the guide can be heard, and if not, why. */
export type SoundState = 'on' | 'untouched' | 'muted' | Silence;

/** What can be heard, felt and seen of the device while it leads. */
export type Presence = {
  /** Every line that was said since the bench was opened, in order. */
  readonly captions: readonly string[];
  readonly sound: SoundState;
  readonly awake: WakeState;
  /** The ears; nothing where the maker wants none. */
  readonly ear: EarShown | undefined;
  /** Turns the ears on or off. */
  turnEars: (on: boolean) => void;
};

/** A guide as the bench needs it: what it is about, what can be answered, and the two ways to answer. */
export type HandsFree = Presence & {
  readonly context: GuideContext;
  /** The card that the guide asked the screen to open. */
  readonly card: Card | undefined;
  /** What was heard to have gone wrong, for the hand to tell. */
  readonly mishap: Mishap | undefined;
  /** Why the last report was not taken; a doubt is no refusal. */
  readonly refused: Problem | undefined;
  /** What was not taken belongs to a page that is left. */
  putAway: () => void;
  open: (card: Card | undefined, mishap?: Mishap) => void;
  tell: (situation: Situation) => void;
  hear: (command: Command, how: How) => void;
  draft: (report: GuideReport) => void;
};
