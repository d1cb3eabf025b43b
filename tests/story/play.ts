import { RULES } from '../../src/domain/gates/passing';
import type { GuideReport } from '../../src/guide/guide-events';
import type { Words } from '../../src/guide/guide-text';
import { lead, type Lead } from '../../src/guide/lead';
import { listen } from '../../src/guide/listen';
import { situationOf } from '../../src/guide/situation-of';
import type { KitSheet } from '../../src/procedure/kit-sheet';
import type { Mishap } from '../../src/procedure/mishap';
import type { Place } from '../../src/procedure/phase';
import { en } from '../../src/text/en';
import { guide } from '../../src/text/en/guide';
import { formatsFor } from '../../src/text/formats';
import type { Command } from '../../src/voice/commands';
import type { Ears } from '../../src/voice/ear/ears';
import type { Tone } from '../../src/voice/tones';
import { FIRST_SOUND_PREFERENCES } from '../../src/domain/sound-preferences';
import { SpeechQueue } from '../../src/voice/speech-queue';
import type { Instant } from '../../src/domain/unit';
import type { Problem } from '../../src/domain/problem';
import type { Report } from '../../src/workflow/batch-event';
import { FakeEngine } from './fake-engines';
import { Maker } from './maker';
import { SimulatedClock } from './simulated-clock';

/** What the ears can give the guide. */
type Heard =
  | { type: 'ears'; listening: boolean }
  | { type: 'number'; value: number }
  | { type: 'unsure'; command: Command }
  | { type: 'mishap heard'; mishap: Mishap };

export const words: Words = {
  text: en,
  formats: formatsFor({
    preferences: { volume: 'litres', temperature: '°C' },
    language: 'en',
    timeZone: 'UTC',
  }),
  whole: () => en,
};

export const TICK = 250;
/** Seconds that a maker thinks, or is at it, before the answer. */
const THINKS = 2;

/** One visit, played under a simulated clock and written down as a script: who says what, and when. */
export class Play {
  readonly maker: Maker;
  readonly clock: SimulatedClock;
  readonly script: string[] = [];
  #lead: Lead;
  #opened = 0;
  #unlisten: () => void = () => undefined;

  private constructor(maker: Maker) {
    this.maker = maker;
    this.clock = new SimulatedClock(maker.now.at);
    this.#lead = this.#open();
  }

  /** The curtain rises where the batch stands. */
  static with(maker: Maker): Play {
    return new Play(maker);
  }

  static at(sheet: KitSheet, place: Place): Play {
    return new Play(new Maker(sheet).goTowards(place));
  }

  get context() {
    return this.#lead.actor.getSnapshot().context;
  }

  /** The page is closed and opened again some time later. */
  async reload(secondsLater: number): Promise<this> {
    this.#lead.stop();
    this.clock.sleep(secondsLater * 1000);
    this.script.push('(the page is opened again)');
    this.#lead = this.#open();
    await this.hearsOut();
    return this;
  }

  #open(): Lead {
    this.#opened = this.#opened || this.clock.now();
    const queue = new SpeechQueue({
      engine: new FakeEngine(this.clock),
      after: this.clock.after,
      language: 'en',
      preferences: () => FIRST_SOUND_PREFERENCES,
      caption: (line) => this.#write('Guide', line),
      silent: (why) => this.#write('Guide', `(${why})`),
    });
    queue.prime();
    const opened = lead(words, {
      speaker: queue,
      tones: { play: (tone) => this.#sound(tone) },
      ticker: { subscribe: (tick) => this.clock.every(TICK, tick) },
      now: this.clock.now,
      report: (report) => Promise.resolve(this.#take(report)),
      show: (card, mishap) => this.#write('Screen', [card, ...(mishap ? [mishap] : [])].join(', ')),
      deafen: () => this.#write('Ears', 'off'),
    });
    this.#tell(opened);
    return opened;
  }

  #tell(to: Lead): void {
    this.maker.now = { ...this.maker.now, at: this.clock.now() };
    to.tell(situationOf(this.maker.snapshot, this.maker.now, words));
  }

  /** The screen tells the guide how things stand, as it does every second. */
  looks(): void {
    this.#tell(this.#lead);
  }

  #take(report: GuideReport): Problem | undefined {
    this.maker.now = { ...this.maker.now, at: this.clock.now() };
    const full = (
      report.type === 'gate passed' ? { ...report, rules: RULES, readings: [] } : report
    ) as Report;
    const problem = this.maker.report(full);
    const about = 'act' in report ? report.act : 'gate' in report ? report.gate : undefined;
    this.#write(
      'Batch',
      [problem ? `refused (${problem.code})` : report.type, ...(about ? [about] : [])].join(', '),
    );
    if (!problem) this.#tell(this.#lead);
    return problem;
  }

  /** A tone stands in the line that it belongs to: "ready" after what was asked, an alert before what is said. */
  #sound(tone: Tone): void {
    if (tone === 'heard') return;
    if (tone !== 'ready') this.#write('♪', tone);
    else this.script.push(`${this.script.pop() ?? ''} ♪`);
  }

  #write(who: string, what: string): void {
    const seconds = Math.floor((this.clock.now() - this.#opened) / 1000);
    const minute = String(Math.floor(seconds / 60));
    this.script.push(`${minute}:${String(seconds % 60).padStart(2, '0')} ${who}: ${what}`);
  }

  /** Waits until nothing more is being said. */
  async hearsOut(): Promise<this> {
    await this.clock.pass(0);
    while (this.context.saying !== undefined) await this.clock.pass(TICK);
    return this;
  }

  async waits(seconds: number): Promise<this> {
    await this.clock.pass(seconds * 1000);
    return this;
  }

  /** Says a command, as soon as the guide is silent and a moment has passed. */
  async says(command: Command): Promise<this> {
    await this.hearsOut();
    await this.waits(THINKS);
    return this.interrupts(command);
  }

  /** Says a command now, whatever is being said. */
  async interrupts(command: Command): Promise<this> {
    this.#write('Maker', guide.commands[command][0] ?? command);
    this.#lead.hear(command, 'voice');
    await this.clock.pass(0);
    return this;
  }

  /** Presses a pad. */
  presses(command: Command): void {
    this.#lead.hear(command, 'touch');
  }

  /** Lends the guide ears of its own. */
  lends(ears: Ears): void {
    this.#unlisten = listen(this.#lead.actor, ears, this.clock.now);
  }

  /** The ears go on or off. */
  async listens(listening = true): Promise<this> {
    await this.#send({ type: 'ears', listening });
    return this.hearsOut();
  }

  /** Says a number, as soon as the guide is silent and a moment has passed. */
  async tells(value: number): Promise<this> {
    await this.hearsOut();
    await this.waits(THINKS);
    this.#write('Maker', String(value));
    return this.#send({ type: 'number', value });
  }

  /** Something is heard that may have been a command, or that tells what went wrong; or hearing is hard. */
  async mayHaveSaid(command: Command): Promise<this> {
    await this.hearsOut();
    return this.#send({ type: 'unsure', command });
  }
  async saysWhatHappened(mishap: Mishap): Promise<this> {
    await this.hearsOut();
    return this.#send({ type: 'mishap heard', mishap });
  }

  async #send(event: Heard): Promise<this> {
    this.#lead.actor.send({ ...event, at: this.clock.now() });
    await this.clock.pass(0);
    return this;
  }

  /** Fills in a card. */
  async types(report: GuideReport): Promise<this> {
    await this.hearsOut();
    await this.waits(THINKS);
    this.#write('Maker', `(types: ${report.type})`);
    this.#lead.draft(report);
    await this.clock.pass(0);
    return this;
  }

  /** What a careful maker would put on the card of the current act, or at the gate. */
  card(): GuideReport {
    const made: Report[] = [];
    const probe = Object.assign(Object.create(this.maker) as Maker, {
      report: (report: Report) => void made.push(report),
    });
    if (probe.act) probe.answer();
    else probe.read();
    return made[0] as GuideReport;
  }

  /** When it is worth coming back: when the next act is due, or when the gate could open. */
  get comesBack(): Instant | undefined {
    const { next, gate } = this.context.situation ?? {};
    if (next) return next.due;
    return gate && !gate.verdict.open ? gate.verdict.earliest : undefined;
  }

  close(): void {
    this.#unlisten();
    this.#lead.stop();
  }
}
