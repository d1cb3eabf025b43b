import { dictationAt, type Answers, type Field } from '../../../src/guide/dictation';
import type { GuideReport } from '../../../src/guide/guide-events';
import { readBack } from '../../../src/guide/read-back';
import type { Situation } from '../../../src/guide/situation';
import { spokenAnswer } from '../../../src/guide/spoken-answer';
import { isTyped } from '../../../src/guide/touches';
import type { Act } from '../../../src/procedure/step';
import type { BatchEvent } from '../../../src/workflow/batch-event';
import { words } from '../../story/play';
import { CLIPS } from '../../voice/corpus/render-clips';
import { expect } from '../fixtures';
import { keptEvents } from '../kept-events';
import { Led, type Evidence } from '../led';
import { spokenOn } from '../spoken';
import { SpokenTo } from '../spoken-to';
import { phraseFor } from './said-numbers';

const [YES, NO, DONE] = ['yes it is', 'no it is not', 'that is done'];
const TRIES = 4;

/** What a maker says by mistake the first time: by the act, and what is asked in it. */
export type Slips = Readonly<Record<string, number>>;

/** A batch led by what is said alone. Whatever was heard wrongly is put right by voice as well. */
export class LedByVoice extends Led {
  /** Who talks over a running tap all day says some things more than three times. */
  readonly spoken = new SpokenTo(this.page, CLIPS, 6);
  slips: Slips = {};
  readonly #slipped = new Set<string>();

  async #heading(): Promise<string> {
    return (await this.bench.heading.textContent()) ?? '';
  }

  async #kept(): Promise<number> {
    return (await keptEvents(this.page)).length;
  }

  protected override async heed(read: () => Promise<void>): Promise<void> {
    // A page that still waits for its day would take a number for one of the maker's own.
    await expect(this.bench.heading).not.toHaveText(/^Next, /);
    const main = this.page.locator('.pads button:visible').first();
    await expect(main).toBeEnabled();
    if (!/^ready to continue/.test(await main.innerText())) return;
    await read();
    const isWarned = async () => (await this.bench.pad(/^ready to continue/).count()) > 0;
    await this.spoken.saysUntil('ready to continue', async () => !(await isWarned()));
  }

  protected override async goOn(): Promise<void> {
    await this.#counts('go on now');
  }

  protected override async answer(act: Act): Promise<void> {
    if (act.kind === 'stir' || act.kind === 'timer') return this.#byTheClock(act.seconds);
    if (act.kind === 'judge') {
      const isYes = act.what === 'foam' || act.what === 'clear';
      return this.#counts(isYes ? YES : NO);
    }
    if (!isTyped(act)) return this.#counts(DONE);
    const story = this.maker.fork();
    story.answer();
    await this.#tells(act.kind === 'reading' ? 'new reading' : 'write this down', story.journal.at(-1)!, act);
  }

  protected override async prove(event: Evidence): Promise<void> {
    if (event.type === 'reading taken') await this.#tells('new reading', event);
    else await this.#counts(event.yes ? YES : NO);
  }

  async #byTheClock(seconds: number): Promise<void> {
    await this.#counts('start the clock');
    await this.bench.wait(seconds / 3600);
    await this.#counts(DONE);
  }

  /** Says a phrase, and yes to whatever is asked back, until it counts. */
  async #counts(phrase: string): Promise<void> {
    const already = await this.#kept();
    for (let said = phrase, nth = 0; (await this.#kept()) === already; said = YES, nth += 1) {
      if (nth > TRIES) throw new Error(`“${phrase}” never counted; it asks: ${await this.#heading()}`);
      const before = await this.#heading();
      await this.spoken.saysUntil(
        said,
        async () => (await this.#kept()) > already || (await this.#heading()) !== before,
      );
    }
    await this.page.waitForTimeout(100);
  }

  /** Fills in a card by voice, listens to what is read back, and says no until it is right. */
  async #tells(begin: string, event: BatchEvent, act?: Act): Promise<void> {
    const situation = (act ? { now: { act } } : {}) as Situation;
    const right = readBack(event as GuideReport, words, situation, event.at);
    const { fields } = dictationAt(situation);
    await this.spoken.saysUntil(begin, async () => (await this.#heading()) === this.#asks(fields[0]!));
    for (let nth = 0; ; nth += 1) {
      for (const field of fields) await this.#tell(field, event);
      const asked = await this.#readBack();
      if (asked === right) break;
      if (nth === TRIES) throw new Error(`it reads back “${asked}” for “${String(right)}”`);
      this.spoken.putRight.push(`“${asked}”`);
      await this.spoken.saysUntil(NO, async () => (await this.#heading()) === this.#asks(fields[0]!));
    }
    await this.#counts(YES);
  }

  /** What is said to be answered with yes or no. */
  async #readBack(): Promise<string> {
    const last = async () => (await spokenOn(this.page)).captions.at(-1) ?? '';
    await expect.poll(last).toMatch(/Right\?$/);
    return last();
  }

  #asks = (field: Field): string => words.text.dictated.asks[field](words.formats);

  async #tell(field: Field, event: BatchEvent): Promise<void> {
    const wanted = answersIn(event)[field]!;
    const phrase = () => this.#phrase(field, wanted, event);
    await this.spoken.tells(this.#asks(field), phrase, spokenAnswer(field, wanted, words));
  }

  #phrase(field: Field, wanted: number | boolean, event: BatchEvent): string {
    if (typeof wanted === 'boolean') return wanted ? YES : NO;
    const where = `${'act' in event ? String(event.act) : 'gate'}, ${field}`;
    const slip = this.#slipped.has(where) ? undefined : this.slips[where];
    this.#slipped.add(where);
    return phraseFor(field, slip ?? wanted);
  }
}

/** An event, as the answers that its card asks for. */
function answersIn(event: BatchEvent): Partial<Answers> {
  const told = event as BatchEvent & Partial<Answers>;
  return event.type === 'instrument checked'
    ? { ...told, isCoarse: event.division === 20, isOfSixty: event.calibratedAt !== 20 }
    : told;
}
