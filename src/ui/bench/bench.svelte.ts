import { createContext } from 'svelte';
import type { Moment } from '../../domain/calendar';
import type { Preferences } from '../../domain/preferences';
import type { Problem } from '../../domain/problem';
import { asOf, type Facts } from '../../procedure/facts';
import { heldUpBy, type HeldUp } from '../../procedure/held-up-by';
import type { KitSheet } from '../../procedure/kit-sheet';
import { isPhase, type Place } from '../../procedure/phase';
import { plan } from '../../procedure/plan';
import type { Act } from '../../procedure/step';
import type { Formats } from '../../text/formats';
import { tell, type BenchText, type Text } from '../../text/text';
import type { GuideReport } from '../../guide/guide-events';
import type { Command } from '../../voice/commands';
import type { Report } from '../../workflow/batch-event';
import { placeOf } from '../../workflow/replay';
import type { Choice } from '../choices/choice';
import { guideOffers, isAlways } from './guide-offers';
import type { BenchProps } from './bench-props';
import type { HandsFree } from './hands-free';
import type { laterParts } from './later-parts';
import type { Offer, Press } from './offer';
import type { RestOfBench } from './rest-of-bench';

/** What every part of the bench reads, and the one way to report. */
export class Bench {
  readonly #props: () => BenchProps;
  /** What the screen alone reported and the batch did not take. */
  #refused = $state<Problem>();
  /** Reasons and the rarer pads, while they are asked for. */
  reasons = $state(false);
  more = $state(false);
  #choice = $state.raw<Choice>();
  /** It is told what listening takes, before the microphone is asked for. */
  invites = $state(false);
  /** A report is on its way to the disk: another press of the same pad is not a second answer. */
  busy = $state(false);

  constructor(props: () => BenchProps) {
    this.#props = props;
  }

  get sheet(): KitSheet {
    return this.#props().snapshot.context.sheet;
  }
  get facts(): Facts {
    return this.#facts;
  }
  readonly #facts = $derived.by(() => asOf(this.#props().snapshot.context.facts, this.now));
  get place(): Place {
    return placeOf(this.#props().snapshot);
  }
  /** The acts of this phase, done or not. */
  get acts(): readonly Act[] {
    return this.#acts;
  }
  readonly #acts = $derived.by(() => (isPhase(this.place) ? plan(this.place, this.sheet, this.facts) : []));
  get act(): Act | undefined {
    return this.acts.find(({ done }) => !done);
  }
  /** What asks here, and why its answer is no. */
  get held(): HeldUp | undefined {
    return this.#held;
  }
  readonly #held = $derived.by(() => heldUpBy(this.place, this.sheet, this.facts));
  get now(): Moment {
    return this.#props().now;
  }
  get text(): BenchText {
    return this.#props().text;
  }
  get words(): BenchText['bench'] {
    return this.text.bench;
  }
  get rest(): RestOfBench {
    return this.#props().rest;
  }
  /** What the first act does not show; nothing until it has come. */
  get parts(): typeof laterParts | undefined {
    return this.rest.now?.parts;
  }
  /** All words: only for what is itself a part of the rest, and came with them. */
  get whole(): Text {
    const rest = this.rest.now;
    if (!rest) throw new Error('a part of the rest of the bench stands before the rest has come');
    return rest.text;
  }
  /** Asks for the rest; where it does not come, `rest.failed` says so. */
  bringRest = (): void => void this.rest.bring().catch(() => undefined);
  get formats(): Formats {
    return this.#props().formats;
  }
  get preferences(): Preferences {
    return this.#props().preferences;
  }
  get hands(): HandsFree {
    return this.#props().hands;
  }
  /** What was not taken last, until something is. */
  get refused(): Problem | undefined {
    return this.#refused ?? this.hands.refused;
  }

  /** What the guide offers to answer what it asks. */
  get answers(): Offer[] {
    return this.#offers.filter((each) => !isAlways(each));
  }
  /** What the guide offers at any time. */
  get always(): Offer[] {
    return this.#offers.filter(isAlways);
  }
  readonly #offers = $derived.by(() =>
    guideOffers(this.hands, this.text, (command, how) => this.hear(command, how)),
  );

  /** The page of the maker's own choosing that is open; what was heard to have gone wrong opens its own. */
  get choice(): Choice | undefined {
    const { mishap } = this.hands;
    return this.#choice ?? (mishap && { page: 'mishap', mishap });
  }

  copy = (text: string): Promise<boolean> => this.#props().oncopy(text);

  /** Opens a page of the maker's own choosing. What was refused before does not belong to it. */
  choose(choice: Choice): void {
    this.#putAway();
    this.more = false;
    this.#choice = choice;
  }

  leaveChoice = (): void => {
    this.#putAway();
    this.#choice = undefined;
    if (this.hands.mishap) this.hands.open(undefined);
  };

  #putAway(): void {
    this.#refused = undefined;
    this.hands.putAway();
  }

  /** Back to where the batch stands. A guide that was held goes on from there; no gate is passed by that. */
  resume = (how: Press): void => {
    this.leaveChoice();
    if (this.hands.context.stage === 'held') this.hear('go on', how);
  };

  /** Tells the guide what was pressed. What it says about that, the screen shows. */
  hear(command: Command, how: Press): void {
    if (command === 'why') this.reasons = !this.reasons;
    if (command === 'what can I say') this.more = !this.more;
    this.hands.hear(command, how);
  }

  /** Hands a filled-in card to the guide, which reads it back before it counts. */
  draft(report: GuideReport): void {
    this.hands.draft(report);
  }

  /** Turns the ears on or off. The first time it is told what becomes of what is said. */
  turnEars(on: boolean): void {
    if (on && this.hands.ear?.isNew) this.invites = !this.invites;
    else this.hands.turnEars(on);
  }
  acceptEars(): void {
    this.invites = false;
    this.hands.turnEars(true);
  }

  /** The sentence for a problem; nothing for none. */
  tell(problem: Problem | undefined): string | undefined {
    return problem && tell(this.text, problem, this.formats);
  }

  /** Reports what only a screen may report, and says whether it was taken. */
  async send(report: Report): Promise<boolean> {
    if (this.busy) return false;
    this.busy = true;
    try {
      this.#refused = await this.#props().onreport(report);
    } finally {
      this.busy = false;
    }
    return this.#refused === undefined;
  }
}

export const [getBench, setBench] = createContext<Bench>();
