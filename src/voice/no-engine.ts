import type { Engine } from './engine';

/** Where a device has nothing to speak with at all: an engine without a voice. */
export const NO_ENGINE: Engine = {
  voices: () => [],
  speak: (_, { failed }) => failed(),
  cancel: () => undefined,
};
