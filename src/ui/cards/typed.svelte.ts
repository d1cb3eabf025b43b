import type { Problem } from '../../domain/problem';
import type { Result } from '../../domain/result';
import type { Bench } from '../bench/bench.svelte';

/** One thing typed: its text as it stands, and what is wrong with it. */
export class Typed<Value> {
  text = $state('');
  problem = $state<Problem>();

  constructor(
    readonly bench: Bench,
    readonly parse: (given: string) => Result<Value>,
  ) {}

  /** Reads the text: the value when it can be used. */
  read(): Value | undefined {
    const result = this.parse(this.text);
    this.problem = result.ok ? undefined : result.problem;
    return result.ok ? result.value : undefined;
  }

  get sentence(): string | undefined {
    return this.bench.tell(this.problem);
  }
}
