/** Something that is fetched when it is wanted, or a while before. What did not come is asked for again. */
export class Later<What> {
  readonly #fetch: () => Promise<What>;
  #coming: Promise<What> | undefined;
  #now = $state.raw<What>();
  #failed = $state(false);

  constructor(fetch: () => Promise<What>) {
    this.#fetch = fetch;
  }

  /** Nothing until it has come. */
  get now(): What | undefined {
    return this.#now;
  }

  /** Whether it was asked for last without coming. */
  get failed(): boolean {
    return this.#failed;
  }

  /** Fetched once, however often it is asked for. */
  bring = (): Promise<What> => (this.#coming ??= this.#bring());

  async #bring(): Promise<What> {
    try {
      const what = await this.#fetch();
      this.#failed = false;
      return (this.#now = what);
    } catch (cause) {
      this.#coming = undefined;
      this.#failed = true;
      throw cause;
    }
  }
}
