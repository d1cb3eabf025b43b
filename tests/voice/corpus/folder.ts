/** Where the rendered corpus lies; git ignores it. */
export const FOLDER = 'tests/voice/corpus/rendered';
