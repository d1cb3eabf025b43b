import type { WakeDevice } from './wake-lock';

/** The screen wake lock of the browser, where it has one. */
export const wakeDevice = (): WakeDevice => ({
  request:
    'wakeLock' in navigator
      ? async () => {
          const sentinel = await navigator.wakeLock.request('screen');
          return {
            release: () => sentinel.release(),
            onTaken: (then) => sentinel.addEventListener('release', then, { once: true }),
          };
        }
      : undefined,
  isInSight: () => document.visibilityState === 'visible',
  onInSight: (then) =>
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'visible') then();
    }),
});
