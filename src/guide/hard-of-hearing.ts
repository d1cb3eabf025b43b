import type { HardToHear } from './guide-events';

const A_WHILE = 40_000;
const MISSES = 4;
const LOUD_FOR = 5000;
const TOLD_AGAIN_AFTER = 180_000;

/** Notices when the ears are of little use, and tells it: not again for a good while, and later where it cannot now. */
export class HardOfHearing {
  /** Whether it could be told. */
  readonly #tell: (why: HardToHear) => boolean;
  readonly #told = new Map<HardToHear, number>();
  #misses: readonly number[] = [];
  #loudSince: number | undefined;

  constructor(tell: (why: HardToHear) => boolean) {
    this.#tell = tell;
  }

  /** Something was said, and not understood. */
  missed(at: number): void {
    this.#misses = [...this.#misses.filter((each) => at - each < A_WHILE), at];
    if (this.#misses.length >= MISSES) this.#once('misses', at);
  }

  understood(): void {
    this.#misses = [];
  }

  room(isLoud: boolean, at: number): void {
    this.#loudSince = isLoud ? (this.#loudSince ?? at) : undefined;
    if (this.#loudSince !== undefined && at - this.#loudSince >= LOUD_FOR) this.#once('noise', at);
  }

  #once(why: HardToHear, at: number): void {
    if (at - (this.#told.get(why) ?? -Infinity) < TOLD_AGAIN_AFTER) return;
    if (this.#tell(why)) this.#told.set(why, at);
  }
}
