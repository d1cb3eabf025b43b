import type { Preferences } from '../domain/preferences';

/** What the page itself can do, or be told of. */
export const page = {
  print: () => window.print(),

  /** The look that the maker chose; the device's own where they chose none. */
  show: (theme: Preferences['theme']) => {
    document.documentElement.dataset['theme'] = theme;
  },

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
