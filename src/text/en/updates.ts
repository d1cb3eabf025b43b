/** The words for the app's own files: new versions, and use without a network. */
export const updates = {
  label: 'Versions',
  ready: 'A new version is ready. It comes in once every window is back at all batches, never during an act.',
  refused:
    'This browser does not keep Fallbright for use without a network. All else works: have the network at hand when you open it.',
  putAway: 'Put this message away',
};
