import type { OtherTabs } from '../workflow/journal-store';

/** The other tabs, over a channel of this origin. */
export function otherTabs(channelName = 'fallbright batches'): OtherTabs & { close(): void } {
  const channel = new BroadcastChannel(channelName);
  return {
    tell: (batch) => channel.postMessage(batch),
    listen(heard) {
      const listener = ({ data }: MessageEvent<unknown>): void => {
        if (typeof data === 'string') heard(data);
      };
      channel.addEventListener('message', listener);
      return () => channel.removeEventListener('message', listener);
    },
    close: () => channel.close(),
  };
}
