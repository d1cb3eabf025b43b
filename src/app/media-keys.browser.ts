/** A session's actions, and the key that each is at the bench. A button that starts and stops is one and the same key. */
const KEYS = {
  play: 'MediaPlayPause',
  pause: 'MediaPlayPause',
  nexttrack: 'MediaTrackNext',
  previoustrack: 'MediaTrackPrevious',
} as const satisfies Partial<Record<MediaSessionAction, string>>;

/** Some devices report one press of a button twice: as a key, and to the session. */
const TWICE = 400;

type Device = {
  /** Nothing where the browser has none. */
  session: Pick<MediaSession, 'setActionHandler'> | undefined;
  /** Where keys come in. */
  keys: EventTarget;
  press: (key: string) => void;
  /** Milliseconds, on a clock that nobody sets. */
  now: () => number;
};

const thisDevice = (): Device => ({
  session: 'mediaSession' in navigator ? navigator.mediaSession : undefined,
  keys: window,
  press: (key) =>
    (document.activeElement ?? document).dispatchEvent(
      new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }),
    ),
  now: () => performance.now(),
});

const sameButton = (key: string): string => (/^Media(Play|Pause)$/.test(key) ? 'MediaPlayPause' : key);

/** Takes an earphone's buttons for the keys that they are. Gives how to hand them back. */
export function takeMediaKeys({ session, keys, press, now }: Device = thisDevice()): () => void {
  if (!session) return () => undefined;
  let last: { button: string; at: number } | undefined;
  let isOurs = false;
  const isTwice = (key: string): boolean => {
    const button = sameButton(key);
    const at = now();
    const twice = last?.button === button && at - last.at < TWICE;
    if (!twice) last = { button, at };
    return twice;
  };
  const onkeydown = (event: Event) => {
    const { key } = event as KeyboardEvent;
    if (isOurs || !key.startsWith('Media') || !isTwice(key)) return;
    event.preventDefault();
    event.stopImmediatePropagation();
  };
  const set = (action: MediaSessionAction, handler: (() => void) | null) => {
    try {
      session.setActionHandler(action, handler);
    } catch {
      // A browser that does not know this action: the others still work.
    }
  };
  const actions = Object.entries(KEYS) as [keyof typeof KEYS, string][];
  for (const [action, key] of actions)
    set(action, () => {
      if (isTwice(key)) return;
      isOurs = true;
      press(key);
      isOurs = false;
    });
  keys.addEventListener('keydown', onkeydown, { capture: true });
  return () => {
    for (const [action] of actions) set(action, null);
    keys.removeEventListener('keydown', onkeydown, { capture: true });
  };
}
