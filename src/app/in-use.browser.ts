/**
 * Whether any window of this app is in use. A window in use holds a lock that others see. Where the browser has no Web
 * Locks, each window answers for itself alone.
 */
export class InUse {
  readonly #name = `fallbright in use at ${new URL('.', document.baseURI).pathname}`;
  #release: (() => void) | undefined;
  #released: Promise<unknown> = Promise.resolve();

  mark(inUse: boolean): void {
    if (!('locks' in navigator) || inUse === (this.#release !== undefined)) return;
    this.#release?.();
    this.#release = undefined;
    if (!inUse) return;
    const until = new Promise<void>((resolve) => (this.#release = resolve));
    this.#released = navigator.locks.request(this.#name, { mode: 'shared' }, () => until);
  }

  /** Does something while no window is in use. False where one is, and it was not done. */
  async byNone(act: () => void): Promise<boolean> {
    if (!('locks' in navigator)) {
      act();
      return true;
    }
    await this.#released;
    return navigator.locks.request(this.#name, { ifAvailable: true }, (lock) => {
      if (lock) act();
      return lock !== null;
    });
  }
}
