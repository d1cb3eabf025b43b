/** What there is to tell of the app's own files: a version that waits, or a browser that keeps none of them. */
export type News = 'ready' | 'refused';

/** The last news of versions, until it is put away. What was put away is not said again. */
export class VersionNews {
  readonly #putAway: News[] = [];
  #last = $state.raw<News>();

  get last(): News | undefined {
    return this.#last;
  }

  tell(news: News): void {
    if (!this.#putAway.includes(news)) this.#last = news;
  }

  putAway(): void {
    if (this.#last) this.#putAway.push(this.#last);
    this.#last = undefined;
  }
}
