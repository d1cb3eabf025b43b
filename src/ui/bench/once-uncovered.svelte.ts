/**
 * Whether what lies under a page that covers it is to be drawn: from the moment at which it is uncovered, or once the page
 * above it stands. Whoever presses a key then waits for one page, and the one beneath is there at the next press.
 */
export class OnceUncovered {
  readonly #shown: () => string;
  readonly #covered: () => boolean;
  #drawn = $state<string>();

  constructor(shown: () => string, covered: () => boolean) {
    this.#shown = shown;
    this.#covered = covered;
    // Waits for the frame in which the page above is drawn.
    $effect(() => {
      const here = shown();
      if (!covered()) this.#drawn = here;
      let waiting = 0;
      const frame = requestAnimationFrame(() => (waiting = window.setTimeout(() => (this.#drawn = here))));
      return () => {
        cancelAnimationFrame(frame);
        clearTimeout(waiting);
      };
    });
  }

  get isDrawn(): boolean {
    return !this.#covered() || this.#drawn === this.#shown();
  }
}
