import type { Page } from '@playwright/test';
import type { BatchEvent } from '../../src/workflow/batch-event';

/** The events that the page keeps of its only batch, in the order in which they came. */
export const keptEvents = (page: Page): Promise<BatchEvent[]> =>
  page.evaluate(
    () =>
      new Promise<BatchEvent[]>((resolve, reject) => {
        const opening = indexedDB.open('fallbright');
        opening.onerror = () => reject(new Error('the storage did not open'));
        opening.onsuccess = () => {
          const getting = opening.result.transaction('kept').objectStore('kept').getAll();
          getting.onsuccess = () => {
            opening.result.close();
            const all = getting.result as unknown[];
            resolve(
              all.filter(
                (each): each is BatchEvent =>
                  typeof each === 'object' &&
                  each !== null &&
                  'type' in each &&
                  'how' in each &&
                  'at' in each,
              ),
            );
          };
        };
      }),
  );
