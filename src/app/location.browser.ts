import type { Location } from './ports';

/** The address bar, from the # on: any static host serves it, and the back button works. */
export const location: Location = {
  read: () => window.location.hash,
  subscribe(update) {
    window.addEventListener('hashchange', update);
    return () => window.removeEventListener('hashchange', update);
  },
  go: (address) => {
    window.location.hash = address;
  },
};
