/** The least that a browser can do to keep something for good: one strict transaction with one record. */
export async function keeper(): Promise<(count: number) => Promise<void>> {
  const database = await new Promise<IDBDatabase>((resolve, reject) => {
    const opening = indexedDB.open('counter');
    opening.onupgradeneeded = () => opening.result.createObjectStore('kept');
    opening.onsuccess = () => resolve(opening.result);
    opening.onerror = () => reject(opening.error ?? new Error('the storage did not open'));
  });
  return (count) =>
    new Promise((resolve, reject) => {
      const transaction = database.transaction('kept', 'readwrite', { durability: 'strict' });
      transaction.objectStore('kept').add({ count }, count);
      transaction.oncomplete = () => resolve();
      transaction.onabort = () => reject(transaction.error ?? new Error('the count was not kept'));
    });
}
