import type { FromWorker, MakeEarWorker } from './ear-messages';
import address from './ear.worker?worker&url';

/** `trusted` makes an address of our own one that the page's policy lets a worker be made of. */
export const earWorker =
  (trusted: (address: string) => string): MakeEarWorker =>
  (told, died) => {
    const worker = new Worker(trusted(address), { type: 'module' });
    worker.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => told(data));
    worker.addEventListener('error', died, { once: true });
    return {
      post: (message, hand = []) => worker.postMessage(message, [...hand]),
      end: () => worker.terminate(),
    };
  };
