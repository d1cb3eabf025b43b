import type { Attachment } from 'svelte/attachments';

/**
 * Moves the focus to the words of a new act or question, and the page and its band to their top, so that it is read out and seen. Both wait
 * for the frame in which the words are drawn: asked for sooner, the page would be laid out twice.
 * Hand in a derived title: it runs again only when the words change, never because a second has passed.
 */
export const arriveAt =
  (_title: string): Attachment<HTMLElement> =>
  (heading) => {
    const before = document.activeElement;
    const frame = requestAnimationFrame(() => {
      // Whoever went somewhere else in the meantime stays there.
      if (![before, document.body].includes(document.activeElement)) return;
      heading.focus({ preventScroll: true });
      heading.closest('.act')?.scrollTo({ top: 0 });
      globalThis.scrollTo({ top: 0 });
    });
    return () => cancelAnimationFrame(frame);
  };
