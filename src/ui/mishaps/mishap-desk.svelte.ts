import { parseLocalTime } from '../../domain/parse-local-time';
import type { Problem } from '../../domain/problem';
import { accepted, type Result } from '../../domain/result';
import type { Instant, Litres } from '../../domain/unit';
import { parseVolume } from '../../domain/volume';
import { sachetsNow } from '../../procedure/can-be-told';
import type { Sachet } from '../../procedure/kit-sheet';
import { MISHAPS, type Mishap } from '../../procedure/mishap';
import type { Bench } from '../bench/bench.svelte';
import type { Press } from '../bench/offer';

const LEAST = 0.05 as Litres;
const MOST = 100 as Litres;

/** What is told about one mishap, as it is filled in. What was typed stays until it is taken. */
export class MishapDesk {
  sachet = $state<string>();
  litres = $state('');
  /** When it happened, by a wall clock; empty for just now. */
  happened = $state('');
  #problems = $state.raw<Partial<Record<'litres' | 'happened', Problem>>>({});

  constructor(
    readonly bench: Bench,
    readonly mishap: Mishap,
    /** The sachet that it is known to be about. */
    known?: string,
  ) {
    const [only, ...others] = this.sachets;
    this.sachet = known ?? (others.length === 0 ? only?.id : undefined);
  }

  get #rules() {
    return MISHAPS[this.mishap];
  }
  get asksSachet(): boolean {
    return this.sachets.length > 0;
  }
  get sachets(): readonly Sachet[] {
    return this.#may('sachet') ? sachetsNow(this.bench.sheet, this.bench.facts, this.mishap) : [];
  }
  get asksLitres(): boolean {
    return this.#may('litres');
  }
  /** What is wrong with each field, in words. */
  /** When it happened, where that is told and can be read. */
  get takenAt(): Instant | undefined {
    const happened = parseLocalTime(this.happened, this.bench.now);
    return happened.ok ? happened.value : undefined;
  }

  sentence(field: 'litres' | 'happened'): string | undefined {
    return this.bench.tell(this.#problems[field]);
  }

  /** Hands it to the guide, which reads it back. */
  tell(how: Press): void {
    const litres = this.#litresTyped();
    const happened = parseLocalTime(this.happened, this.bench.now);
    this.#problems = {
      ...(litres.ok ? {} : { litres: litres.problem }),
      ...(happened.ok ? {} : { happened: happened.problem }),
    };
    if (!litres.ok || !happened.ok) return;
    this.bench.draft({
      type: 'mishap told',
      how,
      mishap: this.mishap,
      ...(this.sachet === undefined ? {} : { sachet: this.sachet }),
      ...(litres.value === undefined ? {} : { litres: litres.value }),
      ...(happened.value === undefined ? {} : { takenAt: happened.value }),
    });
  }

  #may(what: 'sachet' | 'litres'): boolean {
    return this.#rules.asks === what || this.#rules.mayTell === what;
  }

  #litresTyped(): Result<Litres | undefined> {
    const isOpen = !this.asksLitres || (this.litres.trim() === '' && this.#rules.asks !== 'litres');
    return isOpen
      ? accepted(undefined)
      : parseVolume(this.litres, this.bench.preferences.volume, LEAST, MOST);
  }
}
