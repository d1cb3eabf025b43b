import { readFileSync, writeFileSync } from 'node:fs';

/** What the engine hears at. */
export const RATE = 16_000;

const HEADER = 44;

/** The samples, from -1 to 1, of a 16-bit mono file at the engine's rate, as the corpus holds them. */
export function readWav(path: string): Float32Array {
  const bytes = readFileSync(path);
  const data = bytes.indexOf('data', 12, 'latin1');
  if (data < 0 || bytes.readUInt16LE(22) !== 1 || bytes.readUInt32LE(24) !== RATE)
    throw new Error(`${path} is not 16-bit mono at ${String(RATE)} Hz: render the corpus again.`);
  const from = data + 8;
  return Float32Array.from(
    { length: (bytes.length - from) >> 1 },
    (_, nth) => bytes.readInt16LE(from + nth * 2) / 32_768,
  );
}

export function writeWav(path: string, samples: Float32Array): void {
  const bytes = Buffer.alloc(HEADER + samples.length * 2);
  bytes.write('RIFF', 0, 'latin1');
  bytes.writeUInt32LE(bytes.length - 8, 4);
  bytes.write('WAVEfmt ', 8, 'latin1');
  bytes.writeUInt32LE(16, 16);
  bytes.writeUInt16LE(1, 20);
  bytes.writeUInt16LE(1, 22);
  bytes.writeUInt32LE(RATE, 24);
  bytes.writeUInt32LE(RATE * 2, 28);
  bytes.writeUInt16LE(2, 32);
  bytes.writeUInt16LE(16, 34);
  bytes.write('data', 36, 'latin1');
  bytes.writeUInt32LE(samples.length * 2, 40);
  samples.forEach((sample, nth) => {
    bytes.writeInt16LE(Math.round(Math.max(-1, Math.min(1, sample)) * 32_767), HEADER + nth * 2);
  });
  writeFileSync(path, bytes);
}
