import type { Division } from '../../domain/gravity';
import { judgeAnswer, MISTAKES, type Answer, type Mistake } from './judge-answer';
import { roundsFrom, type Eye, type Look, type Round } from './round';

const EYES: readonly Eye[] = ['below', 'level', 'above'];

/** Ten hydrometers to read, one after the other: how the one at hand is looked at, and what was answered so far. */
export class Lesson {
  readonly rounds: readonly Round[];
  #answers = $state.raw<readonly Answer[]>([]);
  #nth = $state(0);
  #look = $state.raw<Look>({ eye: 'level', freed: false });
  /** What is typed, and what could not be read of it. */
  typed = $state('');
  unread = $state.raw<Extract<Answer, { verdict: 'unreadable' }>>();

  constructor(
    readonly division: Division,
    random: () => number,
  ) {
    this.rounds = roundsFrom(random, division);
    this.#begin(0);
  }

  #begin(nth: number): void {
    this.#nth = nth;
    this.#look = { eye: this.round?.eye ?? 'level', freed: false };
    this.typed = '';
  }

  get nth(): number {
    return this.#nth;
  }
  /** None when all are read. */
  get round(): Round | undefined {
    return this.rounds[this.#nth];
  }
  get look(): Look {
    return this.#look;
  }
  /** What was answered in this round. */
  get answer(): Answer | undefined {
    return this.#answers[this.#nth];
  }
  get right(): number {
    return this.#answers.filter(({ verdict }) => verdict === 'right').length;
  }
  /** The learner's own mistakes, the most frequent first. */
  get mistakes(): { mistake: Mistake; times: number }[] {
    return MISTAKES.map((mistake) => ({
      mistake,
      times: this.#answers.filter((each) => each.verdict === 'wrong' && each.mistake === mistake).length,
    }))
      .filter(({ times }) => times > 0)
      .toSorted((a, b) => b.times - a.times);
  }

  /** Whether the eye can go so. */
  canMove = (by: 1 | -1): boolean => !this.answer && this.#eyeMoved(by) !== undefined;
  move = (by: 1 | -1): void => {
    const eye = this.#eyeMoved(by);
    if (eye && !this.answer) this.#look = { ...this.#look, eye };
  };
  #eyeMoved(by: 1 | -1): Eye | undefined {
    return EYES[EYES.indexOf(this.#look.eye) + by];
  }

  /** Spins it: bubbles fly off, and it comes to rest in the middle. */
  spin = (): void => {
    if (!this.answer) this.#look = { ...this.#look, freed: true };
  };

  /** Judges what is typed. What cannot be read is typed again, and costs nothing. */
  check = (): void => {
    if (!this.round || this.answer) return;
    const answer = judgeAnswer(this.round, this.#look, this.typed);
    this.unread = answer.verdict === 'unreadable' ? answer : undefined;
    if (answer.verdict !== 'unreadable') this.#answers = [...this.#answers, answer];
  };

  next = (): void => {
    if (this.answer) this.#begin(this.#nth + 1);
  };
}
