const TYPED_INTO = 'input:not([type=radio], [type=checkbox]), textarea, select';
/** Enter after the last digit, and a pedal's tread: none of them writes or moves anything in a field. */
const ENDS_A_LINE = /^(Enter|Page(Up|Down)|Media.*|F\d+)$/;
const PRESSED_BY_ITSELF = 'input, button, a, summary';

/** Whether a key is the focused thing's own: what writes in a field, space and Enter on what can be pressed, arrows on answers. */
function isTheirs(target: EventTarget | null, key: string): boolean {
  if (!(target instanceof Element)) return false;
  if (target.closest(TYPED_INTO)) return !(target instanceof HTMLInputElement && ENDS_A_LINE.test(key));
  if (key === ' ' || key === 'Enter') return target.closest(PRESSED_BY_ITSELF) !== null;
  return key.startsWith('Arrow') && target.matches('input');
}

/** A key that is pressed for the bench: once, alone, and not for what has the focus. */
export const isForTheBench = ({
  key,
  target,
  ctrlKey,
  metaKey,
  altKey,
  repeat,
  defaultPrevented,
}: KeyboardEvent): boolean =>
  !(defaultPrevented || ctrlKey || metaKey || altKey || repeat || isTheirs(target, key));
