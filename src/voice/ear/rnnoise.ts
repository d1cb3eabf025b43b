import openRnnoiseModule from '@echogarden/rnnoise-wasm';
import { FRAME, type Denoiser } from './denoiser';

const BYTES_A_SAMPLE = 4;
const FULL_SCALE = 32_768;

export async function openRnnoise(wasmBinary: Uint8Array): Promise<Denoiser> {
  const rnnoise = await openRnnoiseModule({ wasmBinary });
  const state = rnnoise._rnnoise_create(0);
  const at = rnnoise._malloc(FRAME * BYTES_A_SAMPLE);
  const first = at / BYTES_A_SAMPLE;
  return {
    clean(frame, to) {
      for (let index = 0; index < FRAME; index++)
        rnnoise.HEAPF32[first + index] = (frame[index] ?? 0) * FULL_SCALE;
      const speech = rnnoise._rnnoise_process_frame(state, at, at);
      for (let index = 0; index < FRAME; index++)
        to[index] = (rnnoise.HEAPF32[first + index] ?? 0) / FULL_SCALE;
      return speech;
    },
  };
}
