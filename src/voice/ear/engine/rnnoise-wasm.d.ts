declare module '@echogarden/rnnoise-wasm' {
  type Rnnoise = {
    /** Looked up anew after every call: it is replaced when the memory grows. */
    readonly HEAPF32: Float32Array;
    _malloc(bytes: number): number;
    _rnnoise_create(model: number): number;
    _rnnoise_process_frame(state: number, to: number, from: number): number;
  };
  export default function open(options: { wasmBinary: Uint8Array }): Promise<Rnnoise>;
}
