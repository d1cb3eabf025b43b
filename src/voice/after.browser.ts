import type { After } from './engine';

/** A span of this device's own time. */
export const after: After = (milliseconds, then) => {
  const timer = setTimeout(then, milliseconds);
  return () => clearTimeout(timer);
};
