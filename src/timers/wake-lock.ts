/** Whether the screen stays on: asked for and got, taken away by the device, refused, or not to be had here. */
export type WakeState = 'off' | 'held' | 'lost' | 'refused' | 'absent';

export type WakeLock = {
  readonly state: WakeState;
  hold: () => Promise<void>;
  release: () => Promise<void>;
  subscribe: (changed: () => void) => () => void;
};

/** One lock of the device's. It is taken away whenever the page is out of sight. */
export type Lock = { release: () => Promise<void>; onTaken: (then: () => void) => void };

/** What the device has to keep a screen on with. `request` rejects where it is refused. */
export type WakeDevice = {
  request: (() => Promise<Lock>) | undefined;
  isInSight: () => boolean;
  onInSight: (then: () => void) => void;
};

/** Keeps the screen on for as long as it is wanted: asks again each time the page comes back into sight. */
export class ScreenAwake implements WakeLock {
  readonly #device: WakeDevice;
  readonly #listeners = new Set<() => void>();
  #state: WakeState = 'off';
  #wanted = false;
  #lock: Lock | undefined;

  constructor(device: WakeDevice) {
    this.#device = device;
    device.onInSight(() => {
      if (this.#wanted && this.#state !== 'held') void this.hold();
    });
  }

  get state(): WakeState {
    return this.#state;
  }

  async hold(): Promise<void> {
    this.#wanted = true;
    const { request, isInSight } = this.#device;
    if (!request) this.#become('absent');
    if (!request || this.#lock || !isInSight()) return;
    try {
      this.#take(await request());
    } catch {
      this.#become('refused');
    }
  }

  async release(): Promise<void> {
    this.#wanted = false;
    const lock = this.#lock;
    this.#lock = undefined;
    this.#become('off');
    await lock?.release();
  }

  subscribe(changed: () => void): () => void {
    this.#listeners.add(changed);
    return () => this.#listeners.delete(changed);
  }

  #take(lock: Lock): void {
    if (!this.#wanted || this.#lock) return void lock.release();
    this.#lock = lock;
    lock.onTaken(() => {
      if (this.#lock !== lock) return;
      this.#lock = undefined;
      this.#become('lost');
    });
    this.#become('held');
  }

  #become(state: WakeState): void {
    if (this.#state === state) return;
    this.#state = state;
    for (const changed of this.#listeners) changed();
  }
}
