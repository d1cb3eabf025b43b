/** Puts a text on the device's clipboard: no where the browser, or its owner, does not let a page do so. */
export async function copy(text: string): Promise<boolean> {
  // There is none on a page that did not come over a safe connection.
  if (!('clipboard' in navigator)) return false;
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}
