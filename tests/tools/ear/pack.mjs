import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

/**
 * Packs what the ear needs into one file, gzip over all: a header (its length, then JSON), then the parts end to end.
 * Tables of numbers lie byte plane by byte plane there, and some as differences: gzip then halves what it leaves.
 */

/** How each file of the acoustic model is laid out before gzip: the best of those tried. */
const MODEL = [
  { name: 'mdef', planes: 24, differences: true },
  { name: 'means', planes: 4, differences: false },
  { name: 'variances', planes: 4, differences: true },
  { name: 'sendump', planes: 1, differences: false },
  { name: 'transition_matrices', planes: 1, differences: false },
  { name: 'noisedict', planes: 1, differences: false },
  { name: 'feat.params', planes: 1, differences: false },
];
const AS_IT_IS = { planes: 1, differences: false };

const FIRST_SOUND = 'A'.charCodeAt(0);

/**
 * @param {Buffer} bytes
 * @param {{ planes: number, differences: boolean }} layout
 */
function laidOut(bytes, { planes, differences }) {
  const rows = Math.floor(bytes.length / planes);
  const out = Buffer.from(bytes);
  for (let plane = 0; plane < planes; plane++)
    for (let row = 0; row < rows; row++) out[plane * rows + row] = bytes[row * planes + plane] ?? 0;
  if (differences) for (let at = out.length - 1; at > 0; at--) out[at] = (out[at] ?? 0) - (out[at - 1] ?? 0);
  return out;
}

/**
 * The dictionary as two columns in the order of its words, each sound one letter.
 * @param {string} text
 */
function columns(text) {
  const lines = text
    .trimEnd()
    .split('\n')
    .map((line) => line.trim().split(/\s+/))
    .sort(([one = ''], [other = '']) => (one < other ? -1 : 1));
  const sounds = [...new Set(lines.flatMap(([, ...spoken]) => spoken))].sort();
  const letter = new Map(sounds.map((sound, at) => [sound, String.fromCharCode(FIRST_SOUND + at)]));
  const column = (/** @type {string[]} */ values) => Buffer.from(values.join('\n'));
  return {
    sounds,
    words: column(lines.map(([word = '']) => word)),
    spoken: column(lines.map(([, ...spoken]) => spoken.map((sound) => letter.get(sound)).join(''))),
  };
}

const [model = '', dictionary = '', engine = '', denoiser = '', to = ''] = process.argv.slice(2);
const { sounds, words, spoken } = columns(readFileSync(dictionary, 'utf8'));
const parts = [
  { name: 'engine', ...AS_IT_IS, bytes: readFileSync(engine) },
  { name: 'denoiser', ...AS_IT_IS, bytes: readFileSync(denoiser) },
  ...MODEL.map((layout) => ({ ...layout, bytes: readFileSync(join(model, layout.name)) })),
  { name: 'words', ...AS_IT_IS, bytes: words },
  { name: 'spoken', ...AS_IT_IS, bytes: spoken },
];
const header = Buffer.from(
  JSON.stringify({ sounds, parts: parts.map(({ bytes, ...part }) => ({ ...part, size: bytes.length })) }),
);
const size = Buffer.alloc(4);
size.writeUInt32LE(header.length);
const raw = Buffer.concat([size, header, ...parts.map((part) => laidOut(part.bytes, part))]);
const packed = gzipSync(raw, { level: 9, memLevel: 9 });
writeFileSync(to, packed);
console.log(`${to}: ${raw.length} bytes, ${packed.length} packed`);
