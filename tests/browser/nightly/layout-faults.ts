import type { Page } from '@playwright/test';

/**
 * What lies wrong on the page as it stands: nothing may scroll sideways, run off, be cut, lie beneath the pads, or be too
 * small to press; what is to be done is in sight, and where there is more than is shown, that is shown too. Runs in the page.
 */
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
    // What is meant to be moved sideways, by keys as well.
    .filter((element) => element.getAttribute('tabindex') !== '0')
    .map((element) => `is cut: ${told(element)}`);
  return [...sideways, ...small, ...off, ...cut];
}

/** What the pads lie over, what of the heading is out of sight, and a band that goes on without a sign of it. Runs in the page. */
function hiddenNow(): string[] {
  const told = (element: Element) => element.textContent.trim().replace(/\s+/g, ' ').slice(0, 40);
  const clips = (element: Element) => getComputedStyle(element).overflowY !== 'visible';
  /** How much of a line is left by the bands that it stands in. */
  const seen = (element: Element, line: DOMRect) => {
    let { top, bottom, left, right } = line;
    for (let around = element.parentElement; around; around = around.parentElement) {
      if (around === document.body || !clips(around)) continue;
      const edge = around.getBoundingClientRect();
      [top, bottom] = [Math.max(top, edge.top), Math.min(bottom, edge.bottom)];
      [left, right] = [Math.max(left, edge.left), Math.min(right, edge.right)];
    }
    return { top, bottom, left, right };
  };
  const linesOf = (element: Element) => {
    if (element instanceof SVGElement) return [element.getBoundingClientRect()];
    const words = document.createRange();
    words.selectNodeContents(element);
    return [...words.getClientRects()];
  };
  const pads = document.querySelector('.offers');
  const at = pads?.getBoundingClientRect();
  const ear = document.querySelector('.band > [aria-pressed]')?.getBoundingClientRect();
  const overlap = (one: DOMRect, two: DOMRect) =>
    Math.min(one.right, two.right) - Math.max(one.left, two.left) > 1 &&
    Math.min(one.bottom, two.bottom) - Math.max(one.top, two.top) > 1;
  const underTheEar = [...document.querySelectorAll('.band p')]
    .filter((element) => element.checkVisibility() && !element.closest('.unseen'))
    .filter((element) => ear && linesOf(element).some((line) => overlap(line, ear)))
    .map((element) => `lies beneath the ear: ${told(element)}`);
  const shown = [
    ...document.querySelectorAll('.act :is(h1, h2, p, li, dt, dd, label, button, figure svg, .picture svg)'),
  ].filter((element) => element.checkVisibility() && !element.closest('.unseen, .sign'));
  const beneath = shown
    .filter((element) =>
      linesOf(element).some((line) => {
        const { top, bottom, left, right } = seen(element, line);
        const wide = Math.min(right, at?.right ?? 0) - Math.max(left, at?.left ?? 0);
        return wide > 2 && Math.min(bottom, at?.bottom ?? 0) - Math.max(top, at?.top ?? 0) > 2;
      }),
    )
    .map((element) => `lies beneath the pads: ${told(element)}`);
  const heading = document.querySelector('.act h1');
  const place = heading?.getBoundingClientRect();
  const left = heading && place && seen(heading, place);
  const isOut = place && left && left.bottom - left.top < place.height - 2;
  const out = heading && isOut ? [`is not wholly in sight: ${told(heading)}`] : [];
  const unsaid = [...document.querySelectorAll('.act')]
    .filter((act) => clips(act) && act.scrollHeight - act.scrollTop > act.clientHeight + 8)
    .filter((act) => !act.querySelector('.sign')?.checkVisibility())
    .map((act) => `goes on without a sign of it: ${told(act)}`);
  return [...underTheEar, ...beneath, ...out, ...unsaid];
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
  const faults = async () => [...(await page.evaluate(faultsNow)), ...(await page.evaluate(hiddenNow))];
  /** Once the page has seen what is in sight of it: the clock of a page may stand still, its eyes do not. */
  const drawn = () =>
    page.evaluate(
      () =>
        new Promise<void>((seen) => {
          const look = new IntersectionObserver(() => {
            look.disconnect();
            seen();
          });
          look.observe(document.body);
        }),
    );
  await drawn();
  const here = await faults();
  await page.evaluate(lengthen, true);
  await drawn();
  const longer = await faults();
  await page.evaluate(lengthen, false);
  return [...here, ...longer.map((fault) => `a third longer: ${fault}`)];
}
