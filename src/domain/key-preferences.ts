/** What a key may be mapped to. Nothing that needs a page of its own, such as overriding a gate, is among them. */
export const KEY_ACTIONS = [
  'main',
  'back',
  'again',
  'how long',
  'where are we',
  'wait',
  'something went wrong',
  'ears',
] as const;
export type KeyAction = (typeof KEY_ACTIONS)[number];

/** What a key does, by the name that the browser gives it; letters are small ones. */
export type Keys = Readonly<Record<string, KeyAction>>;

/** Keys as they come from a keyboard, a foot pedal, a slide clicker or an earphone's button. */
const FIRST_KEYS: Keys = {
  ' ': 'main',
  Enter: 'main',
  PageDown: 'main',
  MediaPlayPause: 'main',
  MediaPlay: 'main',
  MediaTrackNext: 'main',
  PageUp: 'back',
  Backspace: 'back',
  MediaTrackPrevious: 'back',
  r: 'again',
  l: 'how long',
  v: 'ears',
};

/** The maker has mapped none. */
export const NO_OWN_KEYS: Keys = {};

/** Why a key cannot be mapped: it has work everywhere, it is a pad's, only goes with others, or has no name. */
export type Unmappable = 'Tab' | 'Escape' | 'digit' | 'modifier' | 'browser' | 'nameless';

const MODIFIER =
  /^(Shift|Control|Alt|AltGraph|Meta|OS|Super|Hyper|Fn|FnLock|Symbol|SymbolLock|(Caps|Num|Scroll)Lock)$/;
const BROWSER = /^F(5|11|12)$/;
const NAMELESS = /^(|Unidentified|Dead|Process)$/;

/** A letter is the same key with and without Shift. */
export const keyNamed = (key: string): string => (/^.$/u.test(key) ? key.toLowerCase() : key);

/** Why this key cannot be mapped; nothing where it can. */
export function whyUnmappable(key: string): Unmappable | undefined {
  if (key === 'Tab' || key === 'Escape') return key;
  if (/^[1-9]$/.test(key)) return 'digit';
  if (MODIFIER.test(key)) return 'modifier';
  if (BROWSER.test(key)) return 'browser';
  return NAMELESS.test(key) ? 'nameless' : undefined;
}

/** What a key does: as the maker mapped it, or as at first. */
export const actionOf = (key: string, own: Keys): KeyAction | undefined =>
  own[keyNamed(key)] ?? FIRST_KEYS[keyNamed(key)];

/** The keys that an action has now: the maker's own before those of the first day. */
export const keysFor = (action: KeyAction, own: Keys): string[] =>
  [...new Set([...Object.keys(own), ...Object.keys(FIRST_KEYS)])].filter(
    (key) => actionOf(key, own) === action,
  );

/** The maker's keys with one more. A key that does again what it did at first is none of the maker's own. */
export function withKey(own: Keys, key: string, action: KeyAction): Keys {
  const name = keyNamed(key);
  const others = Object.fromEntries(Object.entries(own).filter(([each]) => each !== name));
  return FIRST_KEYS[name] === action ? others : { ...others, [name]: action };
}
