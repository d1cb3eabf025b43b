import type { Page } from '@playwright/test';

/** What lies wrong on the page as it stands: nothing may scroll sideways, run off, be cut, or be too small to press. Runs in the page. */
function faultsNow(): string[] {
  const LEAST_PAD = 72;
  const told = (element: Element) => element.textContent.trim().replace(/\s+/g, ' ').slice(0, 40);
  const root = document.documentElement;
  const sideways =
    root.scrollWidth > root.clientWidth ? [`scrolls sideways to ${String(root.scrollWidth)}`] : [];
  const small = [...document.querySelectorAll('.pads button')]
    .map((pad) => ({ pad, height: pad.getBoundingClientRect().height }))
    .filter(({ height }) => height > 0 && height < LEAST_PAD)
    .map(({ pad, height }) => `${String(height)} px is too low to press: ${told(pad)}`);
  const worded = [...document.querySelectorAll('main *')].filter(
    (element) =>
      element instanceof HTMLElement &&
      element.checkVisibility() &&
      !element.closest('.unseen') &&
      [...element.childNodes].some((node) => node instanceof Text && node.data.trim() !== ''),
  );
  const off = worded
    .filter((element) => {
      const { left, right, width } = element.getBoundingClientRect();
      return width > 0 && (left < -1 || right > root.clientWidth + 1);
    })
    .map((element) => `runs off the screen: ${told(element)}`);
  const cut = worded
    .filter(
      (element) =>
        getComputedStyle(element).overflowX !== 'visible' && element.scrollWidth > element.clientWidth + 1,
    )
    .map((element) => `is cut: ${told(element)}`);
  return [...sideways, ...small, ...off, ...cut];
}

/** Every sentence a third longer, as another language may be; and back again. Runs in the page. */
function lengthen(longer: boolean): void {
  const marked = document as Document & { lengthened?: [Text, string][] };
  for (const [text, words] of marked.lengthened ?? []) text.data = words;
  marked.lengthened = [];
  if (!longer) return;
  const walker = document.createTreeWalker(document.querySelector('main')!, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const text = node as Text;
    if (text.parentElement?.closest('svg, style, .unseen') || text.data.trim() === '') continue;
    marked.lengthened.push([text, text.data]);
    text.data = text.data.replace(/\p{L}{4,}/gu, (word) => word + word.slice(0, Math.ceil(word.length / 3)));
  }
}

/** What lies wrong on the page, and what would in a language whose words are a third longer. */
export async function layoutFaults(page: Page): Promise<string[]> {
  const here = await page.evaluate(faultsNow);
  await page.evaluate(lengthen, true);
  const longer = await page.evaluate(faultsNow);
  await page.evaluate(lengthen, false);
  return [...here, ...longer.map((fault) => `a third longer: ${fault}`)];
}
