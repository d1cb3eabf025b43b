import type { Preferences } from '../domain/preferences';

/** By then the first screen is drawn, also on a slow phone. */
const SETTLED_MS = 2000;

/** By then the screen shows what a press has led to, also on a slow phone. */
const SHOWN_MS = 150;

/** What the page itself can do, or be told of. */
export const page = {
  print: () => window.print(),

  /** The look that the maker chose; the device's own where they chose none. */
  show: (theme: Preferences['theme']) => {
    document.documentElement.dataset['theme'] = theme;
  },

  /** At the first touch or key: what is on the screen is about to change in any case. */
  atFirstTouch: (work: () => void) => {
    const touched = new AbortController();
    const begin = () => {
      touched.abort();
      work();
    };
    for (const touch of ['pointerdown', 'keydown'])
      window.addEventListener(touch, begin, { capture: true, signal: touched.signal });
  },

  /** A while after the page stands, when it has nothing to do: so that the first screen comes before what is not needed yet. */
  whenIdle: (work: () => void) => {
    const idle = () => ('requestIdleCallback' in window ? window.requestIdleCallback(work) : work());
    window.setTimeout(idle, SETTLED_MS);
  },

  /** A moment later, for what nobody waits for. */
  onceShown: (work: () => void) => {
    window.setTimeout(work, SHOWN_MS);
  },

  /** Whether this page came from what is kept for use without a network. */
  isKept: (): boolean => 'serviceWorker' in navigator && navigator.serviceWorker.controller !== null,

  /** Whether the browser has promised to keep what is stored. */
  isStoragePromised: async (): Promise<boolean> =>
    'storage' in navigator && 'persisted' in navigator.storage && (await navigator.storage.persisted()),

  /**
   * Faults that nothing has caught: bugs, told to the maker in one sentence while everything goes on. Where nothing was
   * thrown the browser only remarks on its own layout, as when a turned screen is measured twice in one frame.
   */
  onFault: (told: () => void) => {
    window.addEventListener('error', ({ error }) => {
      if (error !== undefined && error !== null) told();
    });
    window.addEventListener('unhandledrejection', told);
  },
};
