/** What the screens around the bench say before the rest of the words has been fetched. */
export const firstScreens = {
  title: (screen: string) => `${screen} · Fallbright`,

  nav: {
    label: 'Around the app',
    home: 'All batches',
    bench: 'Back to the bench',
    settings: 'Settings',
    help: 'Help',
    safety: 'Safety card',
  },

  missing: {
    title: 'Nothing here',
    notOpened: 'This could not be opened',
    home: 'Go to all batches',
  },

  fetched: {
    title: 'Not here yet',
    notFetched: 'This page could not be fetched. Everything else goes on; try again when you are online.',
    batchesNotFetched:
      'What it takes to open your batches could not be fetched. They are safe on this device; try again when you are online.',
    again: 'Try again',
  },

  trouble: {
    unforeseen:
      'Something in Fallbright tripped. What you recorded is kept; if the screen looks wrong, load the page again.',
    label: 'Trouble',
    putAway: 'Put this message away',
  },

  opening: {
    title: 'Fallbright',
    batches: 'Your batches',
    what: 'Fallbright leads you from a boxed juice kit to bottles laid down, one act at a time, with your hands in the work. It holds you back before whatever cannot be undone until your own readings say that it is time.',
    first: 'Nothing is started yet. Have the box and its sheet beside you.',
    start: 'Start a batch',
    bringIn: 'Bring in a batch file',
    broughtIn: {
      new: (name: string) => `${name} is here, with all that its file holds.`,
      same: (name: string) => `${name} was here already, exactly so.`,
      'longer in file': (name: string) => `${name} had gone further in the file, and is as far here now.`,
      'longer here': (name: string) => `${name} has gone further here than in the file. Nothing was changed.`,
      copy: (name: string) => `${name} went another way in the file than here. The file’s is kept beside it.`,
    },
    running: 'Under way',
    ended: 'Ended',
    kitAndStyle: (kit: string, style: string) => `${kit}, ${style}`,
    noYeastYet: 'no yeast yet',
    urgency: { late: 'Late', now: 'Now', later: 'Next', ended: 'Ended' },
    when: (urgency: 'late' | 'now' | 'later' | 'ended', atGate: boolean, when: string) =>
      urgency === 'later'
        ? atGate
          ? `${when}, at the earliest`
          : when
        : atGate
          ? `since ${when}`
          : `It was due ${when}.`,
    endedOn: (date: string) => `It ended on ${date}.`,
    progress: (place: string, nth: number, of: number) => `${place}: stage ${nth} of ${of}`,
    journal: 'journal',
    journalOf: (name: string) => `Journal of ${name}`,
    held: 'This batch could not be read to its end. Nothing is lost: keep it as a file, and it can be looked into.',
    keepFile: 'Keep it as a file',
    persisted: 'The browser has promised to keep your batches until you delete them.',
    notPersisted:
      'The browser may clear your batches when space runs short. Keep a file of each from its journal, or put Fallbright on the home screen.',
  },
};
