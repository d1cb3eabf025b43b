import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { actionOf, NO_OWN_KEYS, type KeyAction, type Keys } from '../../domain/key-preferences';
import { en as text } from '../../text/en';
import KeySettings from './KeySettings.svelte';

const words = text.keys.settings;

/** The section as the settings show it: what is chosen comes back to it. */
function show() {
  let own: Keys = NO_OWN_KEYS;
  const props = () => ({ own, text, onchoose });
  const { rerender } = render(KeySettings, props());
  function onchoose(next: Keys) {
    own = next;
    void rerender(props());
  }
  const of = (action: KeyAction) => screen.getByRole('group', { name: text.keys.actions[action] });
  return {
    of,
    does: (key: string) => actionOf(key, own),
    isAsFirst: () => own === NO_OWN_KEYS,
    map: async (action: KeyAction, keys: string): Promise<void> => {
      await userEvent.click(within(of(action)).getByRole('button', { name: words.ask }));
      await userEvent.keyboard(keys);
    },
  };
}

describe('a key', () => {
  test('is given to an action by pressing it, and it is told which one was taken', async () => {
    const { map, does, of } = show();
    await map('wait', 'w');
    expect(does('w')).toBe('wait');
    expect(of('wait')).toHaveTextContent(words.taken('w', 'wait'));
    expect(within(of('wait')).getByText('W').tagName).toBe('KBD');
  });

  test('that was another action’s changes hands, and it is said', async () => {
    const { map, does, of } = show();
    await map('wait', 'r');
    expect(does('r')).toBe('wait');
    expect(of('wait')).toHaveTextContent(words.takenFrom('r', 'again', 'wait'));
    expect(of('wait')).toHaveTextContent(words.keyless('again'));
  });

  test.each([
    ['5', 'digit'],
    ['{Tab}', 'Tab'],
    ['{F5}', 'browser'],
    ['{Shift}', 'modifier'],
  ] as const)('such as %s is refused with its reason, and another can be pressed', async (keys, why) => {
    const { map, does, of } = show();
    await map('wait', keys);
    expect(of('wait')).toHaveTextContent(words.refused(why));
    await userEvent.keyboard('w');
    expect(does('w')).toBe('wait');
  });

  test('is not waited for after Escape, and nothing has changed', async () => {
    const { map, does, of, isAsFirst } = show();
    await map('wait', '{Escape}w');
    expect(of('wait')).toHaveTextContent(words.stopped);
    expect([does('w'), isAsFirst()]).toEqual([undefined, true]);
  });
});

test('all keys can be as at first', async () => {
  const { map, does } = show();
  await map('wait', 'r');
  await userEvent.click(screen.getByRole('button', { name: words.reset }));
  expect(does('r')).toBe('again');
});
