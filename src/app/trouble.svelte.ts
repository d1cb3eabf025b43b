import type { Problem } from '../domain/problem';

/** What went wrong outside any act: a device that refuses, or a bug of ours. The last of them, until it is put away. */
export class Trouble {
  #last = $state.raw<Problem | 'unforeseen'>();

  get last(): Problem | 'unforeseen' | undefined {
    return this.#last;
  }

  tell(what: Problem | 'unforeseen'): void {
    this.#last = what;
  }

  putAway(): void {
    this.#last = undefined;
  }
}
