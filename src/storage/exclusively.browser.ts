import type { Exclusively } from '../workflow/journal-store';

/** One tab at a time where the browser has Web Locks. Without them the store's own collision is what tells two tabs apart. */
export const exclusively: Exclusively = (name, work) =>
  'locks' in navigator ? navigator.locks.request(name, work) : work();
