import type { BatchHeader } from '../../src/workflow/batch-header';
import { headerOf } from '../../src/workflow/header-of';
import type { Maker } from './maker';

/** The header of a story's batch, as the screens beside the bench are given it. */
export const headerFor = ({ facts: { begun }, sheet, snapshot }: Maker): BatchHeader =>
  headerOf({ id: 'one', name: 'Shelf two', begun, freeHour: 18, sheet }, snapshot);
