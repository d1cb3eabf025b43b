import type { Problem } from '../../domain/problem';
import type { Result } from '../../domain/result';

/** One thing typed: its text as it stands, its value where it has one, and what is wrong once the maker has gone on. */
export class Asked<Value> {
  text = $state('');
  #left = $state(false);
  readonly #result = $derived.by(() => this.parse(this.text));

  constructor(
    readonly parse: (given: string) => Result<Value>,
    given = '',
  ) {
    this.text = given;
  }

  get value(): Value | undefined {
    return this.#result.ok ? this.#result.value : undefined;
  }

  get isEmpty(): boolean {
    return this.text.trim() === '';
  }

  get problem(): Problem | undefined {
    return !this.#left || this.isEmpty || this.#result.ok ? undefined : this.#result.problem;
  }

  /** Typing goes on: nothing half typed is refused. */
  typing(): void {
    this.#left = false;
  }

  leave(): void {
    this.#left = true;
  }
}
