import { describe, expect, test } from 'vitest';
import { ScreenAwake, type Lock, type WakeState } from './wake-lock';

function scene({ refuses = false, absent = false } = {}) {
  let inSight = true;
  let comeIntoSight: () => void = () => undefined;
  let takeAway: () => void = () => undefined;
  const asked = { times: 0 };
  const request = (): Promise<Lock> => {
    asked.times += 1;
    if (refuses) return Promise.reject(new Error('battery saver'));
    return Promise.resolve({ release: () => Promise.resolve(), onTaken: (then) => (takeAway = then) });
  };
  const awake = new ScreenAwake({
    request: absent ? undefined : request,
    isInSight: () => inSight,
    onInSight: (then) => (comeIntoSight = then),
  });
  const states: WakeState[] = [];
  awake.subscribe(() => states.push(awake.state));
  return {
    awake,
    states,
    asked,
    hide: () => {
      inSight = false;
      takeAway();
    },
    show: async () => {
      inSight = true;
      comeIntoSight();
      await Promise.resolve();
      await Promise.resolve();
    },
  };
}

describe('the screen', () => {
  test('stays on, is lost when the page is hidden, and is held again when it comes back', async () => {
    const { awake, states, hide, show } = scene();
    await awake.hold();
    hide();
    await show();
    expect(states).toEqual(['held', 'lost', 'held']);
  });

  test('is asked for once, however often it is wanted', async () => {
    const { awake, asked } = scene();
    await awake.hold();
    await awake.hold();
    expect(asked.times).toBe(1);
  });

  test('is given up when it is no longer wanted, and not asked for again', async () => {
    const { awake, states, asked, hide, show } = scene();
    await awake.hold();
    await awake.release();
    hide();
    await show();
    expect({ states, times: asked.times }).toEqual({ states: ['held', 'off'], times: 1 });
  });

  test.each([
    ['refused is said, and asked for again on coming back', { refuses: true }, ['refused'], 2],
    ['not to be had is said', { absent: true }, ['absent'], 0],
  ] as const)('that is %s', async (_, ways, expected, times) => {
    const { awake, states, asked, hide, show } = scene(ways);
    await awake.hold();
    hide();
    await show();
    expect({ states, times: asked.times }).toEqual({ states: expected, times });
  });
});
