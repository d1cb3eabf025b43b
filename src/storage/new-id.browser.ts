/** An id that no other batch has. Not `randomUUID`, which exists only on secure origins. */
export const newId = (): string =>
  [...crypto.getRandomValues(new Uint8Array(12))].map((byte) => byte.toString(16).padStart(2, '0')).join('');
