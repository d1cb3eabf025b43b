import type { Act, StepId } from '../procedure/step';

/** Longer in the sanitiser spoils nothing, and neither does leaving it. Everything else waits for the maker's word. */
const HARMLESS: ReadonlySet<StepId> = new Set<StepId>(['sanitiser contact']);

/** Nobody is there any more to say "wait". */
const LATEST_SECONDS = 60;

/** Whether a timed act goes on without a word when its time is up and nobody stops it. */
export const goesOnByItself = (act: Act, secondsLate: number): boolean =>
  act.kind === 'timer' && HARMLESS.has(act.step) && secondsLate < LATEST_SECONDS;

export const COUNTDOWN = 10_000;
