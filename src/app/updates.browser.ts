import type { Subscribe } from '../ui/live.svelte';
import { InUse } from './in-use.browser';
import { TAKE_OVER } from './take-over';
import { SERVICE_WORKER, trustedScriptUrl } from './trusted-types.browser';
import type { News } from './version-news.svelte';

type Outside = {
  /** Whether the maker is where nothing is under way, so that the page may be loaded anew. */
  isAtRest: () => boolean;
  /** Tells of every change of place. */
  subscribe: Subscribe;
  tell: (news: News) => void;
};

/**
 * Keeps the app for use without a network. A new version waits until no window is in use: then this page lets it take
 * over, and starts anew with it. A page is never loaded anew anywhere but at rest.
 */
export async function followUpdates({ isAtRest, subscribe, tell }: Outside): Promise<void> {
  const refused = () => {
    if (isFirstRefusal()) tell('refused');
  };
  const registration = await register();
  if (!registration) {
    refused();
    return;
  }
  const inUse = new InUse();
  let isReplaced = false;

  async function settle(): Promise<void> {
    inUse.mark(!isAtRest());
    if (isReplaced && isAtRest()) window.location.reload();
    // The very first version also waits for a moment, with none before it: that is no news.
    const waiting = registration?.active && registration.waiting;
    if (!waiting) return;
    const isTaken = isAtRest() && (await inUse.byNone(() => waiting.postMessage(TAKE_OVER)));
    if (!isTaken) tell('ready');
  }
  const onChange = () => void settle();

  onReplaced(() => {
    isReplaced = true;
    onChange();
  });
  onInstalling(registration, ({ state }) => {
    if (state === 'redundant' && !registration.active) refused();
    onChange();
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void registration.update().catch(() => undefined);
    onChange();
  });
  subscribe(onChange);
  onChange();
}

async function register(): Promise<ServiceWorkerRegistration | undefined> {
  try {
    return await navigator.serviceWorker.register(trustedScriptUrl(SERVICE_WORKER));
  } catch {
    return undefined;
  }
}

/** Not for the very first worker, which takes up a page that had none. */
function onReplaced(told: () => void): void {
  let hadOne = navigator.serviceWorker.controller !== null;
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    if (hadOne) told();
    hadOne = true;
  });
}

function onInstalling(
  registration: ServiceWorkerRegistration,
  changed: (worker: ServiceWorker) => void,
): void {
  const follow = () => {
    const worker = registration.installing;
    worker?.addEventListener('statechange', () => changed(worker));
  };
  registration.addEventListener('updatefound', follow);
  follow();
}

/** Once a sitting: a reload does not say it again. */
function isFirstRefusal(): boolean {
  const key = 'fallbright is not kept';
  try {
    if (sessionStorage.getItem(key) !== null) return false;
    sessionStorage.setItem(key, 'said');
  } catch {
    // A browser that keeps nothing at all hears it each time.
  }
  return true;
}
