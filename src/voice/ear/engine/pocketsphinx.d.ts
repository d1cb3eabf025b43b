/** The compiled engine: the calls of tests/tools/ear/ear.c, and the memory and files they work on. */
export type Engine = {
  FS: {
    mkdir(path: string): void;
    writeFile(path: string, bytes: Uint8Array): void;
    unlink(path: string): void;
  };
  /** Looked up anew after every call: it is replaced when the memory grows. */
  readonly HEAP16: Int16Array;
  readonly HEAPF32: Float32Array;
  UTF8ToString(at: number): string;
  stringToUTF8(text: string, at: number, room: number): void;
  lengthBytesUTF8(text: string): number;
  _malloc(bytes: number): number;
  _free(at: number): void;
  _ear_open(options: number): number;
  _ear_add_word(word: number, sounds: number): number;
  _ear_knows(word: number): number;
  _ear_set_grammar(name: number, grammar: number): number;
  _ear_decode(name: number, samples: number, count: number): number;
  _ear_features(samples: number, count: number, features: number, most: number): number;
  _ear_feature_size(): number;
};
export default function open(options: { wasmBinary: Uint8Array }): Promise<Engine>;
