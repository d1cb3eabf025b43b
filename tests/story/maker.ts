import { heldBack } from '../../src/domain/gates/box-complete';
import { HOUR, nextFreeHour, type Moment } from '../../src/domain/calendar';
import type { Gravity } from '../../src/domain/gravity';
import type { Celsius, Instant, Litres } from '../../src/domain/unit';
import { RULES } from '../../src/domain/gates/passing';
import type { KitSheet } from '../../src/procedure/kit-sheet';
import { COURSE, isPhase, type Gate, type Place } from '../../src/procedure/phase';
import { judge } from '../../src/procedure/judge';
import { asOf } from '../../src/procedure/facts';
import { currentAct } from '../../src/procedure/plan';
import type { Act } from '../../src/procedure/step';
import type { BatchEvent, Report } from '../../src/workflow/batch-event';
import type { BatchInput } from '../../src/workflow/batch-machine';
import { evidence } from '../../src/workflow/evidence';
import { begin, placeOf, step, type BatchSnapshot } from '../../src/workflow/replay';
import type { Problem } from '../../src/domain/problem';

/** A made-up wine: what a hydrometer made for 20 °C would show in it, by days since the yeast. */
export type Wine = { gravityOn: (day: number) => number; celsius: number };

/** Starts in the middle of the sheet's range and is dry from day nine. */
export const normalWine = (sheet: KitSheet): Wine => {
  const start = (sheet.start.lowest + sheet.start.highest) / 2;
  return {
    gravityOn: (day) => Math.round(Math.max(0.994, start - (start - 0.994) * (day / 9)) * 10_000) / 10_000,
    celsius: 21,
  };
};

/** A maker in a story: keeps a batch, a clock and the journal of what was accepted. */
export class Maker {
  readonly journal: BatchEvent[] = [];
  /** Every place the batch stood at, in order. */
  readonly visited: Place[] = ['prepare'];
  readonly input: BatchInput;
  snapshot: BatchSnapshot;
  now: Moment;

  constructor(
    readonly sheet: KitSheet,
    readonly wine: Wine = normalWine(sheet),
    begun: Moment = { at: Date.UTC(2031, 4, 3, 15) as Instant, offsetMinutes: 120 },
    standing?: { snapshot: BatchSnapshot; now: Moment },
  ) {
    this.input = { sheet, begun, freeHour: 18 };
    this.now = standing?.now ?? begun;
    this.snapshot = standing?.snapshot ?? begin(this.input);
  }

  /** The same batch at the same moment, to be led another way. It begins a journal of its own. */
  fork(): Maker {
    return new Maker(this.sheet, this.wine, this.input.begun, this);
  }

  get place(): Place {
    return placeOf(this.snapshot);
  }

  get facts() {
    return this.snapshot.context.facts;
  }

  get act(): Act | undefined {
    return isPhase(this.place) ? currentAct(this.place, this.sheet, this.facts) : undefined;
  }

  /** Reports something now; what is refused is given back and changes nothing. */
  report(report: Report): Problem | undefined {
    const event = { ...report, ...this.now } as BatchEvent;
    const next = step(this.snapshot, event);
    if ('problem' in next) return next.problem;
    this.snapshot = next.snapshot;
    this.journal.push(event);
    if (this.visited.at(-1) !== this.place) this.visited.push(this.place);
    return undefined;
  }

  /** Time passes. */
  wait(hours: number): this {
    this.now = { ...this.now, at: Math.round(this.now.at + hours * HOUR) as Instant };
    return this;
  }

  waitUntil(at: Instant): this {
    this.now = { ...this.now, at: Math.max(at, this.now.at) as Instant };
    return this;
  }

  /** Days since the yeast, with their fraction. */
  get day(): number {
    return (this.now.at - (this.facts.pitched?.at ?? this.now.at)) / (24 * HOUR);
  }

  read(overrides: Partial<Extract<Report, { type: 'reading taken' }>> = {}): Problem | undefined {
    return this.report({
      type: 'reading taken',
      how: 'touch',
      reading: this.shown(),
      sampleCelsius: 20 as Celsius,
      wineCelsius: this.wine.celsius as Celsius,
      degassed: true,
      returned: true,
      confirmed: true,
      ...overrides,
    });
  }

  judge(
    what: 'foam' | 'rush' | 'gas' | 'clear' | 'closures',
    yes: boolean,
    act?: string,
  ): Problem | undefined {
    return this.report({ type: 'judged', how: 'touch', what, yes, ...(act === undefined ? {} : { act }) });
  }

  pass(gate: Gate): Problem | undefined {
    const readings = evidence(gate, this.sheet, asOf(this.facts, this.now));
    return this.report({ type: 'gate passed', how: 'touch', gate, rules: RULES, readings });
  }

  /** What the hydrometer shows: thicker while the water that foam makes room for is held back. */
  shown(): Gravity {
    const { batchLitres } = this.sheet;
    const { brim, done } = this.facts;
    const held = 'add held-back water 1' in done ? 0 : heldBack(brim, batchLitres as Litres);
    const thicker = (10_000 * batchLitres) / (batchLitres - held);
    return Math.round(10_000 + (this.wine.gravityOn(this.day) - 1) * thicker) as Gravity;
  }

  /** Answers the current act as a careful maker with sound wine would, on its day. */
  answer(): Problem | undefined {
    const act = this.act;
    if (!act) throw new Error(`nothing to answer at ${this.place}`);
    if (act.due !== undefined) this.waitUntil(act.due);
    const how = 'touch' as const;
    switch (act.kind) {
      case 'do':
      case 'add':
        return this.wait(0.05).report({ type: 'act done', how, act: act.id });
      case 'wait':
        return this.waitUntil(act.until).report({ type: 'act done', how, act: act.id });
      case 'stir':
      case 'timer':
        this.report({ type: 'clock started', how, act: act.id });
        return this.wait(act.seconds / 3600).report({ type: 'act done', how, act: act.id });
      case 'reading':
        return this.read({ act: act.id });
      case 'temperature':
        return this.report({
          type: 'temperature taken',
          how,
          act: act.id,
          celsius: this.wine.celsius as Celsius,
        });
      case 'litres':
        return this.report({ type: 'litres measured', how, act: act.id, litres: this.litres(act) });
      case 'gap':
        return this.report({ type: 'gap measured', how, act: act.id, millimetres: act.atMost });
      case 'bottles':
        return this.report({
          type: 'bottles counted',
          how,
          act: act.id,
          bottles: Math.max(32, act.wanted),
          closures: Math.max(34, act.wanted),
          threaded: this.sheet.bottle.closure === 'screw cap',
        });
      case 'filled':
        return this.report({ type: 'filled counted', how, act: act.id, filled: act.wanted });
      case 'account':
        return this.report({ type: 'sachets accounted', how, act: act.id, missing: [] });
      case 'instrument':
        return this.report({
          type: 'instrument checked',
          how,
          act: act.id,
          division: 10,
          calibratedAt: 20,
          waterReading: 10_000 as Gravity,
          waterCelsius: 20 as Celsius,
        });
      case 'judge':
        return this.judge(act.what, act.what === 'foam' || act.what === 'clear', act.id);
    }
  }

  litres(act: Extract<Act, { kind: 'litres' }>): Litres {
    const lees = act.of === 'wine' ? 0.6 : 0;
    return Math.max(0, act.suggested - lees) as Litres;
  }

  /** Gives a gate the evidence that it asks for, and passes it. */
  prove(gate: Gate): Problem | undefined {
    if (gate === 'proving gas-free') this.twoGasTests();
    if (gate === 'proving clear') {
      this.waitUntil(this.earliest(gate));
      this.judge('clear', true);
    }
    if (gate === 'proving still') {
      this.waitUntil(this.earliest(gate));
      this.read();
      this.twoGasTests();
    }
    return this.pass(gate);
  }

  /** When a gate says that it could open at the earliest, in the maker's free hours. */
  private earliest(gate: Gate): Instant {
    const verdict = judge(gate, this.sheet, asOf(this.facts, this.now));
    const at = verdict.open ? this.now.at : (verdict.earliest ?? this.now.at);
    return nextFreeHour({ ...this.now, at }, 18);
  }

  private twoGasTests = (): void => [1, 2].forEach(() => this.judge('gas', false));

  /** Goes on until the batch stands at a place. */
  goTo(place: Place): this {
    for (let steps = 0; this.place !== place; steps += 1) {
      if (steps > 500) throw new Error(`never came to ${place}, but to ${this.place}`);
      this.onward();
    }
    return this;
  }

  /** As far as a place, or past it where a sheet has nothing to do there. */
  goTowards(place: Place): this {
    const wanted = [...COURSE, 'finished'].indexOf(place);
    while ([...COURSE, 'finished'].indexOf(this.place) < wanted) this.onward();
    return this;
  }

  private onward(): void {
    const problem = isPhase(this.place) ? this.answer() : this.prove(this.place as Gate);
    if (problem) throw new Error(`${this.place}, ${this.act?.id ?? 'gate'}: ${JSON.stringify(problem)}`);
  }
}
