import type { Problem } from '../../domain/problem';
import type { Bench } from './bench.svelte';
import type { Press } from './offer';
import { EMPTY_DRAFT, understood, type DraftProblems, type ReadingDraft } from './reading-draft';

/** A reading being written down: what was typed, and what is wrong with it. The guide reads it back. */
export class ReadingDesk {
  draft = $state<ReadingDraft>({ ...EMPTY_DRAFT });
  problems = $state<DraftProblems>({});

  constructor(
    readonly bench: Bench,
    readonly act: string | undefined,
  ) {}

  /** Hands the reading to the guide, or says what is wrong. */
  readBack(how: Press): void {
    const { preferences, now } = this.bench;
    const result = understood(this.draft, preferences.temperature, now);
    this.problems = result.ok ? {} : result.problems;
    const act = this.act === undefined ? {} : { act: this.act };
    if (result.ok) this.bench.draft({ type: 'reading taken', how, ...act, ...result.reading });
  }

  /** The sentence beside a field. */
  sentence(field: keyof ReadingDraft): string | undefined {
    const problem: Problem | 'unanswered' | undefined = this.problems[field];
    return problem === 'unanswered' ? this.bench.words.answerThis : this.bench.tell(problem);
  }
}
