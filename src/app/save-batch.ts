import type { BatchEvent } from '../workflow/batch-event';
import type { BatchHeader } from '../workflow/batch-header';
import { orProblem } from '../workflow/or-problem';
import { fileName } from './file-name';
import type { Ports } from './ports';

/**
 * Hands the maker a batch as one file: all that the store holds of it, also what does not follow. Where the store
 * refuses, what is at hand.
 */
export async function saveBatch(
  { batches, files }: Pick<Ports, 'batches' | 'files'>,
  atHand: { header: BatchHeader; events: readonly BatchEvent[] },
): Promise<void> {
  const stored = await orProblem(
    () => batches.store.read(atHand.header.id),
    () => undefined,
  );
  const { header, events } = stored ?? atHand;
  const { writeBatchFile } = await import('../workflow/batch-file');
  files.save(fileName(header.name, 'batch'), writeBatchFile(header, events));
}
