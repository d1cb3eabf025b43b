import { readFileSync } from 'node:fs';

export type Sound = { rate: number; samples: Float32Array };

/** The first channel of a WAV file of 16-bit samples. */
export function readWav(file: string): Sound {
  const bytes = readFileSync(file);
  const channels = bytes.readUInt16LE(22);
  const data = bytes.indexOf('data', 12, 'latin1') + 8;
  const frames = Math.min(bytes.readUInt32LE(data - 4), bytes.length - data) / (2 * channels);
  const samples = Float32Array.from(
    { length: Math.floor(frames) },
    (_, at) => bytes.readInt16LE(data + at * 2 * channels) / 32_768,
  );
  return { rate: bytes.readUInt32LE(24), samples };
}
