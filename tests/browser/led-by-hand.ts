import type { Page } from '@playwright/test';
import { relativeDensity } from '../../src/domain/gravity';
import { isEnd, isPhase, type Gate, type Place } from '../../src/procedure/phase';
import type { Act } from '../../src/procedure/step';
import { en } from '../../src/text/en';
import type { Maker } from '../story/maker';
import { BenchPage } from './bench';

/**
 * A batch led through the real screens from where it stands to its end: a story tells what its careful maker does next,
 * and two hands do the same on the page. `seen` is told of every screen, before it is answered.
 */
export class LedByHand {
  constructor(
    readonly page: Page,
    readonly maker: Maker,
    readonly seen: (name: string, kind: string) => Promise<void> = () => Promise.resolve(),
    readonly bench: BenchPage = new BenchPage(page),
  ) {}

  /** To the end of the batch, or to a place before it. */
  async toTheEnd(before?: Place): Promise<void> {
    for (let steps = 0; !isEnd(this.maker.place) && this.maker.place !== before; steps += 1) {
      if (steps > 300) throw new Error(`never came to an end, but to ${this.maker.place}`);
      await (isPhase(this.maker.place) ? this.#act() : this.#gate(this.maker.place));
    }
  }

  /** The page's clock goes to the story's, and the story's waits for the page's. */
  async #meet(): Promise<void> {
    const now = await this.page.evaluate(() => Date.now());
    const ahead = this.maker.now.at - now;
    if (ahead > 0) await this.bench.wait(ahead / 3_600_000);
    this.maker.waitUntil((await this.page.evaluate(() => Date.now())) as never);
  }

  async #act(): Promise<void> {
    const { maker, bench } = this;
    const act = maker.act!;
    if (act.due !== undefined) maker.waitUntil(act.due);
    await this.#meet();
    const name = `${maker.place}, ${act.id}`;
    await bench.heed(() => this.seen(`${name}, warned of`, 'warning'));
    await this.seen(name, act.kind);
    await this.#answer(act);
    const problem = maker.answer();
    if (problem) throw new Error(`${act.id}: ${JSON.stringify(problem)}`);
  }

  async #answer(act: Act): Promise<void> {
    const { bench, maker } = this;
    switch (act.kind) {
      case 'do':
        return bench.act(/./, async () => {
          await bench.press(/^that is done/);
          if (act.step === 'fill and close') await bench.yes();
        });
      case 'wait':
        maker.waitUntil(act.until);
        await this.#meet();
        return bench.act(/./);
      case 'add':
        return bench.act(/./, () => bench.sachet(act.sachet.printed));
      case 'stir':
      case 'timer':
        return bench.byTheClock(/./, act.seconds);
      case 'account':
        return bench.act(/./, () => bench.allThere());
      case 'instrument':
        return bench.act(/./, () => bench.hydrometer('0.001'));
      case 'reading':
        return bench.act(/./, async () => {
          await bench.read(this.#shown());
          if (/Is it right\?/.test((await bench.heading.textContent()) ?? ''))
            await bench.yesAllTheSame(/Is it right\?/);
        });
      case 'temperature':
        return bench.act(/./, () =>
          bench.number(new RegExp(en.bench.temperature[act.of]), String(maker.wine.celsius)),
        );
      case 'litres':
        return bench.act(/./, () =>
          bench.number(new RegExp(en.bench.litres[act.of].label), maker.litres(act).toFixed(2)),
        );
      case 'gap':
        return bench.act(/./, () => bench.number(new RegExp(en.bench.gap.label), String(act.atMost)));
      case 'filled':
        return bench.act(/./, () => bench.number(new RegExp(en.bench.filled.label), String(act.wanted)));
      case 'bottles':
        return bench.act(/./, () => this.#countBottles(act.wanted));
      case 'judge': {
        const { yes, no } = en.judgements[act.what];
        const answer = act.what === 'foam' || act.what === 'clear' ? yes : no;
        return bench.act(/./, () => bench.press(answer));
      }
    }
  }

  #shown() {
    const { maker } = this;
    return {
      reading: relativeDensity(maker.shown()).toFixed(4),
      sample: '20',
      wine: String(maker.wine.celsius),
    };
  }

  async #countBottles(wanted: number): Promise<void> {
    const words = en.bench.bottles;
    await this.page.getByLabel(words.bottles).fill(String(Math.max(32, wanted)));
    await this.page.getByLabel(words.closures).fill(String(Math.max(34, wanted)));
    const threaded = this.maker.sheet.bottle.closure === 'screw cap';
    await this.page
      .getByRole('group', { name: words.threaded })
      .getByRole('radio', { name: threaded ? en.bench.yes : en.bench.no, exact: true })
      .check();
    await this.bench.readBack();
  }

  async #gate(gate: Gate): Promise<void> {
    const { bench, maker } = this;
    await this.#meet();
    await this.seen(gate, gate);
    const already = maker.journal.length;
    const problem = maker.prove(gate);
    if (problem) throw new Error(`${gate}: ${JSON.stringify(problem)}`);
    for (const event of maker.journal.slice(already)) {
      const ahead = event.at - (await this.page.evaluate(() => Date.now()));
      if (ahead > 0) await bench.wait(ahead / 3_600_000);
      if (event.type === 'judged' && event.what === 'clear') await bench.looksClear();
      if (event.type === 'judged' && event.what === 'gas') await bench.quietGasTest();
      if (event.type === 'reading taken')
        await bench.readAtGate({ ...this.#shown(), reading: relativeDensity(event.reading).toFixed(4) });
      if (event.type !== 'gate passed') continue;
      await this.seen(`${gate}, open`, 'open gate');
      await bench.press(/^go on now/);
    }
  }
}
