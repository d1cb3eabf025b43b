import { relativeDensity } from '../../src/domain/gravity';
import type { Act } from '../../src/procedure/step';
import { en } from '../../src/text/en';
import { Led, type Evidence } from './led';

/** A batch led by two hands that press and type. */
export class LedByHand extends Led {
  protected override heed(read: () => Promise<void>): Promise<void> {
    return this.bench.heed(read);
  }

  protected override goOn(): Promise<void> {
    return this.bench.press(/^go on now/);
  }

  protected override async prove(event: Evidence): Promise<void> {
    const { bench } = this;
    if (event.type === 'reading taken')
      await bench.readAtGate({ ...this.#shown(), reading: relativeDensity(event.reading).toFixed(4) });
    else if (event.what === 'clear') await bench.looksClear();
    else await bench.quietGasTest();
  }

  protected override async answer(act: Act): Promise<void> {
    const { bench, maker } = this;
    switch (act.kind) {
      case 'do':
        return bench.act(/./, async () => {
          await bench.press(/^that is done/);
          if (act.step === 'fill and close') await bench.yes();
        });
      case 'wait':
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
}
