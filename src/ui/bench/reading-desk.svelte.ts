import type { Problem } from '../../domain/problem';
import type { Bench } from './bench.svelte';
import type { Press } from './offer';
import {
  EMPTY_DRAFT,
  understood,
  type DraftProblems,
  type Reading,
  type ReadingDraft,
} from './reading-draft';

/** A reading being written down: its draft, what is wrong with it, and the reading once it can be read back. */
export class ReadingDesk {
  draft = $state<ReadingDraft>({ ...EMPTY_DRAFT });
  problems = $state<DraftProblems>({});
  asked = $state<Reading>();
  /** Why the reading is doubted, while it is asked once more. */
  doubt = $state<Problem>();

  constructor(
    readonly bench: Bench,
    readonly act: string | undefined,
  ) {}

  /** Asks the reading back, or says what is wrong. */
  readBack(): void {
    const { preferences, now } = this.bench;
    const result = understood(this.draft, preferences.temperature, now);
    this.problems = result.ok ? {} : result.problems;
    this.asked = result.ok ? result.reading : undefined;
  }

  /** Back to the fields, with all that was typed. */
  takeBack(): void {
    this.asked = undefined;
    this.doubt = undefined;
  }

  /** The sentence beside a field. */
  sentence(field: keyof ReadingDraft): string | undefined {
    const problem: Problem | 'unanswered' | undefined = this.problems[field];
    return problem === 'unanswered' ? this.bench.words.answerThis : this.bench.tell(problem);
  }

  /** Sends what was answered with yes. What is doubted is asked once more; what is refused comes back to the fields. */
  async send(how: Press): Promise<boolean> {
    const reading = this.asked;
    if (!reading) return false;
    const act = this.act === undefined ? {} : { act: this.act };
    const confirmed = this.doubt === undefined ? {} : { confirmed: true };
    const taken = await this.bench.send({ type: 'reading taken', how, ...act, ...reading, ...confirmed });
    this.doubt = taken || this.doubt ? undefined : this.bench.takeDoubt();
    if (!this.doubt) this.asked = undefined;
    return taken;
  }
}
