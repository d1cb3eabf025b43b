import type { Instant } from '../domain/unit';
import type { Command } from '../voice/commands';
import type { GuideReport, Stage } from './guide-events';
import type { Dictation } from './dictation';
import type { Doubt } from './doubt';
import type { Words } from './guide-text';
import type { Situation } from './situation';

/** What the guide keeps in mind. Nothing of it outlives the page. */
export type GuideContext = {
  words: Words;
  stage: Stage;
  situation: Situation | undefined;
  at: Instant;
  /** Lines still to be said once before what is asked now: the frame, a new stage, where we were. */
  before: readonly string[];
  /** The utterance that is out last; answered by `said`. */
  utterance: number;
  /** Which kind of utterance is being said; nothing when all is said. */
  saying: 'own' | 'aside' | undefined;
  /** What was said last, for the ear that missed it and for the captions. */
  lines: readonly string[];
  /** What is asked now has been said to its end, at least once. Only then can it be answered. */
  told: boolean;
  /** Silence counts from here. */
  since: Instant;
  repeated: boolean;
  /** The ears are on. */
  listening: boolean;
  /** A card that is being filled in by voice. */
  dictation: Dictation | undefined;
  /** A command that was not surely heard: yes means that it was. */
  unsure: Command | undefined;
  /** What went wrong can be said. */
  telling: boolean;
  /** Being read back. */
  draft: GuideReport | undefined;
  /** Why the draft is asked once more, though it was answered with yes. */
  doubt: Doubt | undefined;
  /** What was reported last. */
  sent: GuideReport | undefined;
  /** A report is on its way to the batch. */
  reported: boolean;
  /** Something was typed: hands are no longer clean. */
  typed: boolean;
  /** Warnings that were answered with "ready" in this visit. */
  heeded: readonly string[];
  /** How many acts back the maker looks. */
  lookedBack: number;
  /** Calls of the running clock were made up to here. */
  calledUntil: Instant;
  heldAt: Instant;
};

export const firstContext = (words: Words, at: Instant): GuideContext => ({
  words,
  stage: 'resting',
  situation: undefined,
  at,
  before: [],
  utterance: 0,
  saying: undefined,
  lines: [],
  told: false,
  since: at,
  repeated: false,
  listening: false,
  dictation: undefined,
  unsure: undefined,
  telling: false,
  draft: undefined,
  doubt: undefined,
  sent: undefined,
  reported: false,
  typed: false,
  heeded: [],
  lookedBack: 0,
  calledUntil: at,
  heldAt: at,
});
