import type { DeviceProblem } from '../domain/problem';

/** What went wrong outside any act: a device that refuses, or a bug of ours. The last of them, until it is put away. */
export class Trouble {
  #last = $state.raw<DeviceProblem | 'unforeseen'>();

  get last(): DeviceProblem | 'unforeseen' | undefined {
    return this.#last;
  }

  tell(what: DeviceProblem | 'unforeseen'): void {
    this.#last = what;
  }

  putAway(): void {
    this.#last = undefined;
  }
}
