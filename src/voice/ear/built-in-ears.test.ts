import { describe, expect, test } from 'vitest';
import { BuiltInEars } from './built-in-ears';
import type { FromWorker, ToWorker } from './ear-messages';
import type { EarNews, EarProblem } from './ears';
import { MicrophoneProblem } from './microphone';

const HEARD = { type: 'heard', hearing: undefined, snr: 20, seconds: 1 } as const;
/** Lets what is awaited come. */
const moment = () => new Promise((resolve) => setTimeout(resolve));

/** Ears with a microphone and workers that do as they are told. */
function setUp(refuses?: EarProblem) {
  const news: EarNews[] = [];
  const posted: ToWorker[] = [];
  const workers: { tell: (message: FromWorker) => void; die: () => void; isEnded: boolean }[] = [];
  const microphone = { opened: 0, closed: 0, lose: (_: EarProblem): void => undefined };
  const ears = new BuiltInEars({
    pack: 'the pack',
    microphone: {
      open(lost) {
        if (refuses) return Promise.reject(new MicrophoneProblem(refuses));
        microphone.opened += 1;
        microphone.lose = lost;
        const connect = () => new MessageChannel().port1;
        return Promise.resolve({ rate: 48_000, connect, close: () => void (microphone.closed += 1) });
      },
    },
    makeWorker(tell, die) {
      const worker = { tell, die, isEnded: false };
      workers.push(worker);
      return { post: (message) => void posted.push(message), end: () => void (worker.isEnded = true) };
    },
  });
  ears.subscribe((one) => news.push(one));
  const listen = async () => {
    void ears.turnOn();
    await moment();
    workers.at(-1)?.tell({ type: 'ready' });
  };
  return { ears, news, posted, workers, microphone, listen };
}

describe('turned on', () => {
  test('they ask, fetch, start and listen, and say so', async () => {
    const { ears, news, workers, posted } = setUp();
    const on = ears.turnOn();
    await moment();
    workers[0]?.tell({ type: 'progress', done: 1, total: 2 });
    workers[0]?.tell({ type: 'starting' });
    workers[0]?.tell({ type: 'ready' });
    await on;
    expect(news).toEqual([
      { type: 'state', state: 'asking' },
      { type: 'state', state: 'fetching' },
      { type: 'progress', done: 1, total: 2 },
      { type: 'state', state: 'starting' },
      { type: 'state', state: 'listening' },
    ]);
    expect(posted.map(({ type }) => type)).toEqual(['start', 'microphone']);
  });

  test.each<EarProblem>(['no microphone', 'not allowed', 'microphone in use', 'not supported'])(
    'they fail where there is: %s',
    async (problem) => {
      const { ears, news, workers } = setUp(problem);
      await ears.turnOn();
      expect(news.at(-1)).toEqual({ type: 'state', state: 'failed', problem });
      expect(workers).toEqual([]);
    },
  );

  test('they fail where the fetch breaks, let go of the microphone, and can be turned on again', async () => {
    const { ears, news, workers, microphone, listen } = setUp();
    const on = ears.turnOn();
    await moment();
    workers[0]?.tell({ type: 'broken', problem: 'fetch broken', detail: '' });
    await on;
    expect(news.at(-1)).toEqual({ type: 'state', state: 'failed', problem: 'fetch broken' });
    expect(microphone.closed).toBe(1);
    await listen();
    expect(ears.state).toBe('listening');
  });

  test('they listen for what was on offer before', async () => {
    const { ears, posted, listen } = setUp();
    ears.listenFor('a grammar', 'decoys');
    await listen();
    expect(posted).toContainEqual({ type: 'grammar', grammar: 'a grammar', against: 'decoys', turn: 1 });
  });
});

test('turned off, also while the device asks, they let go of the microphone and are silent', async () => {
  const early = setUp();
  void early.ears.turnOn();
  early.ears.turnOff();
  await moment();
  expect(early.microphone).toMatchObject({ opened: 1, closed: 1 });
  expect(early.workers).toEqual([]);

  const { ears, news, workers, microphone, listen } = setUp();
  await listen();
  ears.turnOff();
  workers[0]?.tell({ type: 'news', news: HEARD, turn: 0 });
  expect(microphone.closed).toBe(1);
  expect(workers[0]?.isEnded).toBe(true);
  expect(news.at(-1)).toEqual({ type: 'state', state: 'off' });
});

describe('shut', () => {
  test('they tell nothing, and nothing that was on its way', async () => {
    const { ears, news, workers, listen } = setUp();
    await listen();
    ears.shut();
    workers[0]?.tell({ type: 'news', news: HEARD, turn: 0 });
    ears.open();
    workers[0]?.tell({ type: 'news', news: HEARD, turn: 0 });
    expect(news.slice(-2)).toEqual([
      { type: 'state', state: 'shut' },
      { type: 'state', state: 'listening' },
    ]);
    workers[0]?.tell({ type: 'news', news: HEARD, turn: 1 });
    expect(news.at(-1)).toEqual(HEARD);
  });

  test('before they listen, they are shut once they do', async () => {
    const { ears, posted, listen } = setUp();
    ears.shut();
    await listen();
    expect(ears.state).toBe('shut');
    expect(posted.map(({ type }) => type)).toEqual(['start', 'shut', 'microphone']);
  });
});

test('what was heard under a grammar before is not told under the next', async () => {
  const { ears, news, workers, listen } = setUp();
  await listen();
  ears.listenFor('another');
  workers[0]?.tell({ type: 'news', news: HEARD, turn: 0 });
  expect(news).not.toContainEqual(HEARD);
});

describe('a worker that dies', () => {
  test('is made anew once, with the same microphone, and then given up', async () => {
    const { ears, news, workers, microphone, listen } = setUp();
    await listen();
    workers[0]?.die();
    workers[1]?.tell({ type: 'ready' });
    expect(ears.state).toBe('listening');
    expect(microphone).toMatchObject({ opened: 1, closed: 0 });
    workers[1]?.die();
    expect(news.at(-1)).toEqual({ type: 'state', state: 'failed', problem: 'engine broken' });
    expect(microphone.closed).toBe(1);
  });

  test('is made anew again where something was heard in between', async () => {
    const { ears, workers, listen } = setUp();
    await listen();
    workers[0]?.die();
    workers[1]?.tell({ type: 'ready' });
    workers[1]?.tell({ type: 'news', news: HEARD, turn: 0 });
    workers[1]?.die();
    workers[2]?.tell({ type: 'ready' });
    expect(ears.state).toBe('listening');
  });
});

describe('a microphone that ends', () => {
  test('is looked for once more', async () => {
    const { ears, microphone, workers, listen } = setUp();
    await listen();
    microphone.lose('microphone lost');
    await moment();
    workers[1]?.tell({ type: 'ready' });
    expect(ears.state).toBe('listening');
    expect(microphone.opened).toBe(2);
  });

  test('because it is no longer allowed is not', async () => {
    const { news, microphone, listen } = setUp();
    await listen();
    microphone.lose('not allowed');
    await moment();
    expect(news.at(-1)).toEqual({ type: 'state', state: 'failed', problem: 'not allowed' });
    expect(microphone.opened).toBe(1);
  });
});
