/** What is not there by then comes without a turn: a page that stands still would look broken. */
const PATIENCE_MS = 200;

const isStill = (): boolean =>
  !('startViewTransition' in document) ||
  document.visibilityState === 'hidden' ||
  window.matchMedia('(prefers-reduced-motion: reduce)').matches;

/** Whether the act on the screen goes on beneath the pads: while it turns it would lie over them. */
function isUnderPads(): boolean {
  const [act, pads] = ['.act', '.offers'].map((part) =>
    [...document.querySelectorAll(part)].find((each) => each.checkVisibility())?.getBoundingClientRect(),
  );
  return act !== undefined && pads !== undefined && act.bottom > pads.top && act.right > pads.left;
}

/**
 * Does the work, and lets what it changes on the screen come in as a page is turned. The work begins first and nothing
 * waits for the turn: where the change is there before the old page could be kept for it, there is none.
 */
export function turnOver<Outcome>(work: () => Promise<Outcome>): Promise<Outcome> {
  const done = work();
  if (isStill() || isUnderPads()) return done;
  // What is published is on the screen by then: it is drawn before the report settles.
  const nothing = () => undefined;
  const shown = done.then(nothing, nothing);
  const transition = document.startViewTransition(() => shown);
  const late = window.setTimeout(() => transition.skipTransition(), PATIENCE_MS);
  void shown.then(() => {
    window.clearTimeout(late);
    if (isUnderPads()) transition.skipTransition();
  });
  // A turn that is skipped, by the next one or by a page that goes out of sight, is no fault.
  for (const end of [transition.ready, transition.updateCallbackDone, transition.finished])
    end.catch(nothing);
  return done;
}
