import { createContext } from 'svelte';
import type { Moment } from '../../domain/calendar';
import type { Preferences } from '../../domain/preferences';
import type { Problem } from '../../domain/problem';
import { asOf, type Facts } from '../../procedure/facts';
import type { KitSheet } from '../../procedure/kit-sheet';
import { isPhase, type Place } from '../../procedure/phase';
import { currentAct } from '../../procedure/plan';
import type { Act } from '../../procedure/step';
import type { Formats } from '../../text/formats';
import { tell, type Text } from '../../text/text';
import type { Report } from '../../workflow/batch-event';
import { placeOf, type BatchSnapshot } from '../../workflow/replay';

export type BenchProps = {
  snapshot: BatchSnapshot;
  now: Moment;
  text: Text;
  formats: Formats;
  preferences: Preferences;
  onreport: (report: Report) => Promise<Problem | undefined>;
  onleave: () => void;
  onjournal: () => void;
  ongonewrong?: () => void;
};

/** What every part of the bench reads, and the one way to report. */
export class Bench {
  readonly #props: () => BenchProps;
  /** What was not taken last, until something is. */
  refused = $state<Problem>();
  /** A report is on its way to the disk: another press of the same pad is not a second answer. */
  busy = $state(false);

  constructor(props: () => BenchProps) {
    this.#props = props;
  }

  get sheet(): KitSheet {
    return this.#props().snapshot.context.sheet;
  }
  get facts(): Facts {
    return asOf(this.#props().snapshot.context.facts, this.now);
  }
  get place(): Place {
    return placeOf(this.#props().snapshot);
  }
  get act(): Act | undefined {
    return isPhase(this.place) ? currentAct(this.place, this.sheet, this.facts) : undefined;
  }
  get now(): Moment {
    return this.#props().now;
  }
  get text(): Text {
    return this.#props().text;
  }
  get words(): Text['bench'] {
    return this.text.bench;
  }
  get formats(): Formats {
    return this.#props().formats;
  }
  get preferences(): Preferences {
    return this.#props().preferences;
  }
  get gonewrong(): (() => void) | undefined {
    return this.#props().ongonewrong;
  }

  /** The sentence for a problem; nothing for none. */
  tell(problem: Problem | undefined): string | undefined {
    return problem && tell(this.text, problem, this.formats);
  }

  /** The last refusal where it only asks whether a reading is right; it is then a question and no refusal. */
  takeDoubt(): Problem | undefined {
    const { refused } = this;
    if (refused?.code !== 'reading-went-up' && refused?.code !== 'reading-jumped') return undefined;
    this.refused = undefined;
    return refused;
  }

  /** Reports, and says whether it was taken. */
  async send(report: Report): Promise<boolean> {
    if (this.busy) return false;
    this.busy = true;
    try {
      this.refused = await this.#props().onreport(report);
    } finally {
      this.busy = false;
    }
    return this.refused === undefined;
  }
}

export const [getBench, setBench] = createContext<Bench>();
