import type { Problem } from '../../domain/problem';
import type { Facts } from '../../procedure/facts';
import type { KitSheet } from '../../procedure/kit-sheet';
import { movedByAbsence } from '../../procedure/moved-by-absence';
import type { Place } from '../../procedure/phase';
import { safePause, unsafeToLeave, type SafePause } from '../../procedure/safe-pause';
import type { Instant } from '../../domain/unit';
import { absence, type Absence } from './absence';

/** A batch as it stands now. */
export type Batch = { sheet: KitSheet; facts: Facts; place: Place };

/** A time away being planned: the two days, whether the batch can be left for so long, and what that moves. */
export class AwayDesk {
  leaving = $state('');
  back = $state('');
  /** It was to be planned before both days were chosen. */
  tried = $state(false);
  readonly #batch: () => Batch;

  constructor(batch: () => Batch) {
    this.#batch = batch;
  }

  /** Both days are chosen anew: the last plan is made. */
  forget(): void {
    this.leaving = '';
    this.back = '';
    this.tried = false;
  }

  get batch(): Batch {
    return this.#batch();
  }
  get absence(): Absence | undefined {
    return absence(this.leaving, this.back, this.batch.facts.now);
  }
  /** How long it can wait here: from the day of leaving, or from now while none is chosen. */
  get pause(): SafePause | undefined {
    const { sheet, facts, place } = this.batch;
    return safePause(
      sheet,
      { ...facts, now: { ...facts.now, at: this.absence?.from ?? facts.now.at } },
      place,
    );
  }
  get problem(): Problem | undefined {
    const { sheet, facts, place } = this.batch;
    return this.absence && unsafeToLeave(sheet, facts, place, this.absence.from, this.absence.until);
  }
  get moved(): Instant | undefined {
    const { sheet, facts, place } = this.batch;
    return this.absence && movedByAbsence(place, sheet, facts, this.absence);
  }
  /** The absences that are planned and not over. */
  get planned(): readonly Absence[] {
    const { facts } = this.batch;
    return facts.away.filter(({ until }) => until > facts.now.at);
  }
}
