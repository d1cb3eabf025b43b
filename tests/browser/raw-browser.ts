import { spawn, type ChildProcess } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Readable, Writable } from 'node:stream';
import { findBrowser } from '../tools/browser.mjs';

type Told = { id?: number; method?: string; params?: Record<string, unknown>; sessionId?: string };
type Answer = Told & { result?: Record<string, unknown>; error?: { message: string } };
const END = '\0';
const ATTEMPTS = 50;

/**
 * A browser without any of a test runner's kindness, over its own pipe: its hidden pages are hidden, and are slowed down
 * as on anyone's device.
 */
export class RawBrowser {
  readonly #profile = mkdtempSync(join(tmpdir(), 'fallbright-'));
  readonly #process: ChildProcess;
  readonly #heard = new Set<(told: Answer) => void>();
  #asked = 0;

  private constructor(program: string) {
    const flags = ['--headless=new', '--no-sandbox', '--no-first-run', '--remote-debugging-pipe'];
    this.#process = spawn(program, [...flags, `--user-data-dir=${this.#profile}`, 'about:blank'], {
      stdio: ['ignore', 'ignore', 'ignore', 'pipe', 'pipe'],
    });
    let rest = '';
    (this.#process.stdio[4] as Readable).on('data', (said: Buffer) => {
      const parts = `${rest}${said.toString()}`.split(END);
      rest = parts.pop() ?? '';
      for (const part of parts) for (const hear of [...this.#heard]) hear(JSON.parse(part) as Answer);
    });
  }

  static async open(): Promise<RawBrowser> {
    const program = await findBrowser();
    if (program === undefined) throw new Error('there is no browser to test with');
    return new RawBrowser(program);
  }

  async close(): Promise<void> {
    const closed = new Promise((resolve) => this.#process.once('exit', resolve));
    this.#process.kill();
    await closed;
    await this.#forget();
  }

  /** What the browser started may outlive it by a moment, and write what is being removed: it is removed once more. */
  async #forget(): Promise<void> {
    for (let attempt = 1; ; attempt += 1)
      try {
        await rm(this.#profile, { recursive: true });
        return;
      } catch (error) {
        if (attempt === ATTEMPTS) throw error;
        await new Promise((resolve) => setTimeout(resolve, 100));
      }
  }

  /** One command, and what it answers. */
  async ask(method: string, params = {}, sessionId?: string): Promise<Record<string, unknown>> {
    this.#asked += 1;
    const id = this.#asked;
    const answered = this.hears((told) => told.id === id);
    const command = sessionId === undefined ? { id, method, params } : { id, method, params, sessionId };
    (this.#process.stdio[3] as Writable).write(`${JSON.stringify(command)}${END}`);
    const { result, error } = await answered;
    if (error) throw new Error(`${method}: ${error.message}`);
    return result ?? {};
  }

  /** The next thing told that fits. */
  hears(fits: (told: Answer) => boolean): Promise<Answer> {
    return new Promise((resolve) => {
      const hear = (told: Answer) => {
        if (!fits(told)) return;
        this.#heard.delete(hear);
        resolve(told);
      };
      this.#heard.add(hear);
    });
  }

  async newPage(): Promise<RawPage> {
    const { targetId } = await this.ask('Target.createTarget', { url: 'about:blank' });
    const { sessionId } = await this.ask('Target.attachToTarget', { targetId, flatten: true });
    return new RawPage(this, targetId as string, sessionId as string);
  }
}

/** A page of it, which is hidden as soon as another is in front. */
export class RawPage {
  constructor(
    private readonly browser: RawBrowser,
    private readonly targetId: string,
    private readonly sessionId: string,
  ) {}

  ask(method: string, params = {}): Promise<Record<string, unknown>> {
    return this.browser.ask(method, params, this.sessionId);
  }

  async toFront(): Promise<void> {
    await this.browser.ask('Target.activateTarget', { targetId: this.targetId });
  }

  async evaluate<T>(expression: string): Promise<T> {
    const { result } = await this.ask('Runtime.evaluate', {
      expression,
      awaitPromise: true,
      returnByValue: true,
      userGesture: true,
    });
    return (result as { value: T }).value;
  }

  /** Presses the first button that begins with these words. */
  press(words: string): Promise<boolean> {
    const wanted = JSON.stringify(words);
    return this.evaluate(
      `(() => { const pad = [...document.querySelectorAll('button:enabled')].find((each) => each.innerText.startsWith(${wanted})); pad?.click(); return pad !== undefined; })()`,
    );
  }

  /** Presses what opens the choice of a file, and chooses one. */
  async chooseFile(words: string, file: string): Promise<void> {
    await this.ask('Page.enable');
    await this.ask('Page.setInterceptFileChooserDialog', { enabled: true });
    const opened = this.browser.hears(({ method }) => method === 'Page.fileChooserOpened');
    await this.press(words);
    const { params } = await opened;
    await this.ask('DOM.setFileInputFiles', { files: [file], backendNodeId: params?.['backendNodeId'] });
  }
}
