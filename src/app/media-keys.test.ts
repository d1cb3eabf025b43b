import { expect, test } from 'vitest';
import { takeMediaKeys } from './media-keys.browser';

class Press extends Event {
  constructor(readonly key: string) {
    super('keydown', { cancelable: true });
  }
}

/** A device whose session does not know every action, with a bench that listens for keys. */
function setUp(unknown: readonly MediaSessionAction[] = []) {
  const handlers = new Map<MediaSessionAction, MediaSessionActionHandler>();
  const keys = new EventTarget();
  const atBench: string[] = [];
  let time = 0;
  const release = takeMediaKeys({
    session: {
      setActionHandler(action, handler) {
        if (unknown.includes(action)) throw new TypeError('no such action');
        if (handler) handlers.set(action, handler);
        else handlers.delete(action);
      },
    },
    keys,
    press: (key) => keys.dispatchEvent(new Press(key)),
    now: () => time,
  });
  keys.addEventListener('keydown', (event) => {
    if (event instanceof Press) atBench.push(event.key);
  });
  return {
    handlers,
    atBench,
    release,
    button: (action: MediaSessionAction) => handlers.get(action)?.({ action }),
    key: (name: string) => keys.dispatchEvent(new Press(name)),
    wait: (milliseconds: number) => void (time += milliseconds),
  };
}

test.each([
  ['play', 'MediaPlayPause'],
  ['pause', 'MediaPlayPause'],
  ['nexttrack', 'MediaTrackNext'],
  ['previoustrack', 'MediaTrackPrevious'],
] as const)('the button for %s is the key %s', (action, key) => {
  const { button, atBench } = setUp();
  button(action);
  expect(atBench).toEqual([key]);
});

test('one press that is reported twice counts once, in whatever order and under whatever name', () => {
  const { button, key, wait, atBench } = setUp();
  button('pause');
  wait(100);
  key('MediaPlayPause');
  wait(100);
  button('play');
  expect(atBench).toEqual(['MediaPlayPause']);
  wait(1000);
  key('MediaPlay');
  wait(399);
  button('play');
  expect(atBench).toEqual(['MediaPlayPause', 'MediaPlay']);
});

test('pressed again later, or another button, counts', () => {
  const { button, key, wait, atBench } = setUp();
  button('nexttrack');
  key('MediaTrackPrevious');
  wait(400);
  button('nexttrack');
  expect(atBench).toEqual(['MediaTrackNext', 'MediaTrackPrevious', 'MediaTrackNext']);
});

test('other keys are let through, however fast', () => {
  const { key, atBench } = setUp();
  key('Enter');
  key('Enter');
  expect(atBench).toEqual(['Enter', 'Enter']);
});

test('an action that the browser does not know leaves the others', () => {
  const { handlers } = setUp(['previoustrack']);
  expect([...handlers.keys()]).toEqual(['play', 'pause', 'nexttrack']);
});

test('handed back, nothing is taken and nothing is left out', () => {
  const { handlers, release, key, atBench } = setUp();
  release();
  expect(handlers.size).toBe(0);
  key('MediaPlay');
  key('MediaPlay');
  expect(atBench).toEqual(['MediaPlay', 'MediaPlay']);
});

test('a browser without a session is left alone', () => {
  const keys = new EventTarget();
  const pressed: string[] = [];
  keys.addEventListener('keydown', () => pressed.push('at the bench'));
  const press = (key: string) => void pressed.push(key);
  const release = takeMediaKeys({ session: undefined, keys, press, now: () => 0 });
  keys.dispatchEvent(new Press('MediaPlay'));
  keys.dispatchEvent(new Press('MediaPlay'));
  release();
  expect(pressed).toEqual(['at the bench', 'at the bench']);
});
