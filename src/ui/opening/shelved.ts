import type { Problem } from '../../domain/problem';
import type { BatchHeader } from '../../workflow/batch-header';

/** A batch as the opening screen shows it: the header, the day of the yeast, and what is wrong with its journal. */
export type Shelved = { header: BatchHeader; day: number | undefined; problem: Problem | undefined };
