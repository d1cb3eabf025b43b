import type { Problem } from '../../domain/problem';
import type { Facts } from '../../procedure/facts';
import type { BatchHeader } from '../../workflow/batch-header';

/** A batch as the opening screen shows it. Without facts its journal could not be opened, and there is a problem. */
export type Shelved =
  | { header: BatchHeader; facts: Facts; problem?: Problem | undefined }
  | { header: BatchHeader; facts: undefined; problem: Problem };
