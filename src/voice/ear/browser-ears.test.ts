import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { BrowserEars, browserHears } from './browser-ears.browser';
import type { EarNews } from './ears';

let answers = 'available';
let made: Recogniser[] = [];

class Recogniser extends EventTarget {
  static available = () => Promise.resolve(answers);
  runs = false;
  processLocally = false;
  constructor() {
    super();
    made.push(this);
  }
  start() {
    this.runs = true;
  }
  abort() {
    this.runs = false;
    this.dispatchEvent(new Event('end'));
  }
  fails(error: string) {
    this.dispatchEvent(Object.assign(new Event('error'), { error }));
    this.abort();
  }
  hears(transcript: string, confidence = 0.9) {
    const results = [Object.assign([{ transcript, confidence }], { isFinal: true })];
    this.dispatchEvent(Object.assign(new Event('result'), { results, resultIndex: 0 }));
  }
}

beforeEach(() => {
  answers = 'available';
  made = [];
  globalThis.SpeechRecognition = Recogniser as never;
});
afterEach(() => {
  globalThis.SpeechRecognition = undefined;
});

async function turnedOn() {
  const ears = new BrowserEars('en');
  const news: EarNews[] = [];
  ears.subscribe((each) => news.push(each));
  await ears.turnOn();
  const words = () => news.flatMap((each) => (each.type === 'heard' ? [each.hearing?.words] : []));
  return { ears, words, own: made[0]! };
}

describe('the ears of the browser', () => {
  test('are used only where they promise to keep to the device', async () => {
    const { ears, own } = await turnedOn();
    expect([ears.state, own.processLocally, own.runs]).toEqual(['listening', true, true]);
    answers = 'downloadable';
    expect(await browserHears('en')).toBe(false);
    const { ears: others } = await turnedOn();
    expect([others.state, made.length]).toEqual(['failed', 1]);
  });

  test('tell what they heard as it would be spelled on a pad', async () => {
    const { own, words } = await turnedOn();
    own.hears('That is done.');
    expect(words()).toEqual(['that is done']);
  });

  test('are shut while we speak, and begin again by themselves', async () => {
    const { ears, own, words } = await turnedOn();
    ears.shut();
    own.hears('that is done');
    expect([ears.state, own.runs, words()]).toEqual(['shut', false, []]);
    ears.open();
    own.fails('no-speech');
    expect([ears.state, own.runs]).toEqual(['listening', true]);
  });

  test('say why they hear nothing any more', async () => {
    const { ears, own } = await turnedOn();
    own.fails('not-allowed');
    expect([ears.state, own.runs]).toEqual(['failed', false]);
  });
});
