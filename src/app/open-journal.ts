import type { Result } from '../domain/result';
import type { Journal, JournalPorts } from '../workflow/journal';

/** What it takes to open a batch. */
export const fetchJournal = () => import('../workflow/journal');

/**
 * Opens a batch. What that takes is fetched with the first batch that is opened, in one place: whoever leaves the bench
 * for all batches has it, and a new version that comes in there finds nothing on its way.
 */
export async function openJournal(ports: JournalPorts, id: string): Promise<Result<Journal>> {
  const { Journal } = await fetchJournal();
  return Journal.open(ports, id);
}
