import type { Page } from '@playwright/test';

/** What the made-up voice of a page was given to say, and whether it says it. */
type Spoken = { lines: string[]; captions: string[] };
declare global {
  var spoken: Spoken;
}

/**
 * Gives a page a voice that is over at once, or takes so many seconds for a line, and writes down what it was given, and
 * every caption as it is shown.
 */
export function madeUpVoice(seconds = 0): void {
  globalThis.spoken = { lines: [], captions: [] };
  class Utterance extends EventTarget {
    lang = '';
    rate = 1;
    volume = 1;
    voice: unknown;
    onstart?: () => void;
    onend?: () => void;
    constructor(readonly text: string) {
      super();
    }
  }
  const voices = [{ voiceURI: 'made up', name: 'Made up', lang: 'en-GB', localService: true, default: true }];
  const synthesis = Object.assign(new EventTarget(), {
    getVoices: () => voices,
    cancel: () => undefined,
    speak: (utterance: Utterance) => {
      if (utterance.volume > 0) globalThis.spoken.lines.push(utterance.text);
      const end = () => utterance.onend?.();
      queueMicrotask(() => {
        utterance.onstart?.();
        if (seconds > 0 && utterance.volume > 0) setTimeout(end, seconds * 1000);
        else end();
      });
    },
  });
  Object.defineProperty(window, 'speechSynthesis', { value: synthesis });
  Object.defineProperty(window, 'SpeechSynthesisUtterance', { value: Utterance });
  new MutationObserver(() => {
    const caption = document.querySelector('[role=log] p')?.textContent;
    if (caption && caption !== globalThis.spoken.captions.at(-1)) globalThis.spoken.captions.push(caption);
  }).observe(document, { subtree: true, childList: true, characterData: true });
}

/** Takes away any voice that the device has. */
export function noVoice(): void {
  Reflect.deleteProperty(window, 'speechSynthesis');
  Object.defineProperty(window, 'speechSynthesis', { value: undefined, configurable: true });
  Reflect.deleteProperty(window, 'speechSynthesis');
}

export const spokenOn = (page: Page): Promise<Spoken> => page.evaluate(() => globalThis.spoken);
