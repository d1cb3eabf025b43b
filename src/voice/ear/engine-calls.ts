import type { Engine } from './engine/pocketsphinx';

const BYTES_A_SAMPLE = 2;
const BYTES_A_FEATURE = 4;
const MOST_FRAMES = 2000;

/** The engine's calls with strings and samples in the place of addresses; what they need of its memory is given back. */
export type EngineCalls = {
  open: (options: string) => boolean;
  addWord: (word: string, sounds: string) => boolean;
  knows: (word: string) => boolean;
  setGrammar: (name: string, grammar: string) => boolean;
  decode: (name: string, samples: Int16Array) => string;
  features: (samples: Int16Array) => Float32Array[];
};

export function callsTo(engine: Engine): EngineCalls {
  const room: Room = (bytes, use) => {
    const at = engine._malloc(bytes);
    try {
      return use(at);
    } finally {
      engine._free(at);
    }
  };
  const text = <T>(given: string, use: (at: number) => T): T => {
    const bytes = engine.lengthBytesUTF8(given) + 1;
    return room(bytes, (at) => {
      engine.stringToUTF8(given, at, bytes);
      return use(at);
    });
  };
  const sound = <T>(samples: Int16Array, use: (at: number) => T): T =>
    room(samples.length * BYTES_A_SAMPLE, (at) => {
      engine.HEAP16.set(samples, at / BYTES_A_SAMPLE);
      return use(at);
    });
  return {
    open: (options) => text(options, (at) => engine._ear_open(at)) === 0,
    addWord: (word, sounds) => text(word, (at) => text(sounds, (of) => engine._ear_add_word(at, of))) >= 0,
    knows: (word) => text(word, (at) => engine._ear_knows(at)) === 1,
    setGrammar: (name, grammar) =>
      text(name, (at) => text(grammar, (of) => engine._ear_set_grammar(at, of))) === 0,
    decode: (name, samples) =>
      text(name, (of) =>
        sound(samples, (at) => engine.UTF8ToString(engine._ear_decode(of, at, samples.length))),
      ),
    features: (samples) => sound(samples, (at) => featuresAt(engine, at, samples.length, room)),
  };
}

type Room = <T>(bytes: number, use: (at: number) => T) => T;

function featuresAt(engine: Engine, samples: number, count: number, room: Room): Float32Array[] {
  const size = engine._ear_feature_size();
  return room(MOST_FRAMES * size * BYTES_A_FEATURE, (to) => {
    const found = engine._ear_features(samples, count, to, MOST_FRAMES);
    const row = (frame: number) => to / BYTES_A_FEATURE + frame * size;
    return Array.from({ length: Math.max(0, found) }, (_, frame) =>
      engine.HEAPF32.slice(row(frame), row(frame + 1)),
    );
  });
}
