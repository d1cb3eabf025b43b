import type { Sachet } from '../../procedure/kit-sheet';
import type { Mishap } from '../../procedure/mishap';

/** A page of the maker's own choosing, over what the bench shows. What it records is typed or pressed, never said. */
export type Choice =
  | { page: 'in spite of' | 'why not' | 'sugar test' | 'away' | 'help' | 'digest' | 'join' }
  | { page: 'leave out'; sachet: Sachet }
  | { page: 'mishap'; mishap: Mishap; sachet?: string };
