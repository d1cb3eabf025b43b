import { JOINABLE } from '../procedure/joinable';
import { joinsAt } from '../procedure/joining';
import { LEADS_BACK } from '../procedure/leads';
import { COURSE, type Gate, type Phase } from '../procedure/phase';

/** From one place to another; to none where the batch stays. */
export type Way = { place: Phase | Gate; to: Phase | Gate | undefined };

/** "What happened?" from wherever it is said: the batch stays, or goes back by the fixed table. */
export const MISHAP_WAYS: readonly Way[] = COURSE.flatMap((place) =>
  [undefined, ...new Set(LEADS_BACK.filter(({ from }) => from.includes(place)).map(({ to }) => to))].map(
    (to) => ({ place, to }),
  ),
);

/** A batch that was running already, from the closed box to where it is taken up. */
export const JOIN_WAYS: readonly Way[] = [...new Set(JOINABLE.map(joinsAt))].map((to) => ({
  place: 'prepare',
  to,
}));
