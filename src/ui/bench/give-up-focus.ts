/**
 * Takes the focus off a heading that is about to go: a browser that has to take it away lays out the whole page for that.
 * Hand in what decides what is shown: it is called anew only when that changes.
 */
export function giveUpFocus(_shown: readonly unknown[]): void {
  const { activeElement } = document;
  if (activeElement instanceof HTMLHeadingElement) activeElement.blur();
}
