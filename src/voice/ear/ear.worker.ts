import type { FromWorker, ToWorker } from './ear-messages';
import wanted from './engine/pack.json';
import { FetchBroken, keptPack, type Shelf } from './kept-pack';
import { listener, type Listener } from './listener';
import { unpack } from './pack';
import { openPocketSphinx } from './pocketsphinx';
import { openRnnoise } from './rnnoise';

const CACHE = 'fallbright ear';

const shelf: Shelf = {
  fetch: (address) => fetch(address),
  cache: async () => ('caches' in globalThis ? caches.open(CACHE) : undefined),
  async sha256(bytes) {
    const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', bytes));
    return [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  },
};

const tell = (message: FromWorker) => postMessage(message);

/** What it hears with, once it has come. */
let engine: Promise<Pick<Parameters<typeof listener>[0], 'denoiser' | 'decoder'>> | undefined;
let ears: Listener | undefined;
let microphone: MessagePort | undefined;
let grammar: { grammar: string; against: string | undefined } | undefined;
let isOpen = true;
let turn = 0;

async function start(address: string) {
  const packed = await keptPack({ address, ...wanted }, shelf, (done, total) =>
    tell({ type: 'progress', done, total }),
  );
  tell({ type: 'starting' });
  const pack = await unpack(packed);
  return { denoiser: await openRnnoise(pack.part('denoiser')), decoder: await openPocketSphinx(pack) };
}

function broken(error: unknown): void {
  const problem = error instanceof FetchBroken ? 'fetch broken' : 'engine broken';
  tell({ type: 'broken', problem, detail: String(error) });
}

/** Listens to a microphone, or to another one, as things stand. */
async function listenTo(rate: number, sound: MessagePort): Promise<void> {
  const parts = await engine;
  if (!parts) return;
  microphone?.close();
  microphone = sound;
  ears = listener({ ...parts, rate, tell: (news) => tell({ type: 'news', news, turn }) });
  if (!isOpen) ears.shut();
  listenFor();
  sound.onmessage = ({ data }: MessageEvent<Float32Array>) => {
    if (grammar) ears?.hear(data);
  };
  tell({ type: 'ready' });
}

function listenFor(): void {
  if (!grammar || !ears) return;
  try {
    ears.listenFor(grammar.grammar, grammar.against);
  } catch (error) {
    grammar = undefined;
    tell({ type: 'broken', problem: 'not a grammar', detail: String(error) });
  }
}

onmessage = ({ data }: MessageEvent<ToWorker>) => {
  switch (data.type) {
    case 'start':
      engine = start(data.pack);
      engine.catch(broken);
      break;
    case 'microphone':
      void listenTo(data.rate, data.sound).catch(() => undefined);
      break;
    case 'grammar':
      ({ turn } = data);
      grammar = data;
      listenFor();
      break;
    case 'shut':
      isOpen = false;
      ears?.shut();
      break;
    case 'open':
      ({ turn } = data);
      isOpen = true;
      ears?.open();
      break;
  }
};
