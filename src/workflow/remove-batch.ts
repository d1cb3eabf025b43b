import type { Problem } from '../domain/problem';
import type { JournalPorts } from './journal';
import { orProblem } from './or-problem';

/** Removes a batch for good, from every copy. Only a screen may call this, on a touch: no voice, no import. */
export function removeBatch(ports: JournalPorts, id: string): Promise<Problem | undefined> {
  const work = async (): Promise<undefined> => {
    await ports.store.remove(id);
    ports.otherTabs.tell(id);
  };
  return orProblem<Problem | undefined>(
    () => ports.exclusively(`batch ${id}`, work),
    (problem) => problem,
  );
}
