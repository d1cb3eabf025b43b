import { Live } from '../ui/live.svelte';
import type { Journal } from '../workflow/journal';

type Standing = Pick<Journal, 'header' | 'events' | 'snapshot' | 'mismatch'>;

/** A journal as it stands, readable in any component. */
export const liveJournal = (journal: Journal): Live<Standing> =>
  new Live(
    () => {
      const { header, events, snapshot, mismatch } = journal;
      return { header, events, snapshot, mismatch };
    },
    (update) => journal.subscribe(update),
  );
