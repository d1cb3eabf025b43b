import { createSubscriber } from 'svelte/reactivity';

/** Something that changes by itself and says when. Gives back how to stop listening. */
export type Subscribe = (update: () => void) => () => void;

/** A source that changes outside Svelte, readable in any component. Asks it on every read, so it is never stale. */
export class Live<Value> {
  readonly #read: () => Value;
  readonly #subscribe: () => void;

  constructor(read: () => Value, subscribe: Subscribe) {
    this.#read = read;
    this.#subscribe = createSubscriber(subscribe);
  }

  get now(): Value {
    this.#subscribe();
    return this.#read();
  }
}
