import type { Page } from '@playwright/test';
import { isEnd, isPhase, type Gate, type Place } from '../../src/procedure/phase';
import type { Act } from '../../src/procedure/step';
import type { BatchEvent } from '../../src/workflow/batch-event';
import type { Maker } from '../story/maker';
import { BenchPage } from './bench';

/** What can be told of a gate's evidence. */
export type Evidence = Extract<BatchEvent, { type: 'judged' | 'reading taken' }>;

/**
 * A batch led through the real screens from where it stands to its end: a story tells what its careful maker does next,
 * and the same is done on the page. `seen` is told of every screen, before it is answered.
 */
export abstract class Led {
  constructor(
    readonly page: Page,
    readonly maker: Maker,
    readonly seen: (name: string, kind: string) => Promise<void> = () => Promise.resolve(),
    readonly bench: BenchPage = new BenchPage(page),
  ) {}

  /** Answers the warning, where one stands before the act; `read` comes before it is answered. */
  protected abstract heed(read: () => Promise<void>): Promise<void>;
  protected abstract answer(act: Act): Promise<void>;
  protected abstract prove(evidence: Evidence): Promise<void>;
  protected abstract goOn(): Promise<void>;

  /** To the end of the batch, or to a place before it. */
  async toTheEnd(before?: Place): Promise<void> {
    for (let steps = 0; !isEnd(this.maker.place) && this.maker.place !== before; steps += 1) {
      if (steps > 300) throw new Error(`never came to an end, but to ${this.maker.place}`);
      await (isPhase(this.maker.place) ? this.#act() : this.#gate(this.maker.place));
    }
  }

  /** The page's clock goes to the story's, and the story's waits for the page's. */
  protected async meet(): Promise<void> {
    const now = await this.page.evaluate(() => Date.now());
    const ahead = this.maker.now.at - now;
    if (ahead > 0) await this.bench.wait(ahead / 3_600_000);
    this.maker.waitUntil((await this.page.evaluate(() => Date.now())) as never);
  }

  async #act(): Promise<void> {
    const { maker } = this;
    const act = maker.act!;
    if (act.due !== undefined) maker.waitUntil(act.due);
    if (act.kind === 'wait') maker.waitUntil(act.until);
    await this.meet();
    const name = `${maker.place}, ${act.id}`;
    await this.heed(() => this.seen(`${name}, warned of`, 'warning'));
    await this.seen(name, act.kind);
    await this.answer(act);
    // What follows is due by when it was answered on the page.
    await this.meet();
    const problem = maker.answer();
    if (problem) throw new Error(`${act.id}: ${JSON.stringify(problem)}`);
  }

  async #gate(gate: Gate): Promise<void> {
    const { bench, maker } = this;
    await this.meet();
    await this.seen(gate, gate);
    const already = maker.journal.length;
    const problem = maker.prove(gate);
    if (problem) throw new Error(`${gate}: ${JSON.stringify(problem)}`);
    for (const event of maker.journal.slice(already)) {
      const ahead = event.at - (await this.page.evaluate(() => Date.now()));
      if (ahead > 0) await bench.wait(ahead / 3_600_000);
      if (event.type === 'judged' || event.type === 'reading taken') await this.prove(event);
      if (event.type !== 'gate passed') continue;
      await this.seen(`${gate}, open`, 'open gate');
      await this.goOn();
    }
  }
}
