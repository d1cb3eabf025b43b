import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { beforeAll, describe, expect, test } from 'vitest';
import { dictionaryOf } from '../src/voice/ear/dictionary';
import pack from '../src/voice/ear/engine/pack.json';
import { unpack, type Pack } from '../src/voice/ear/pack';

const FOLDER = 'public/ear';
const MOST_TO_FETCH = 4_500_000;
const DENOISER = 'node_modules/@echogarden/rnnoise-wasm';

const bytesOf = (file: string) => readFileSync(join(FOLDER, file));
const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
const listed = readFileSync(join(FOLDER, 'SHA256SUMS'), 'utf8')
  .trim()
  .split('\n')
  .map((line) => line.split('  '));

const notices = bytesOf('NOTICES.txt')
  .toString()
  .split(/^=+ (?=\S)/m);

describe('what the ear is made of', () => {
  test.each(listed)('has the checksum %s: %s', (sum, file = '') => expect(sha256(bytesOf(file))).toBe(sum));

  test('is the pack that the worker asks for', () => {
    const bytes = bytesOf('ear.pack');
    expect(pack).toEqual({ bytes: bytes.length, sha256: sha256(bytes) });
  });

  test('is fetched in 4.5 MB, packed already, with all its glue', () => {
    const glue = ['src/voice/ear/engine/pocketsphinx.js', join(DENOISER, 'rnnoise.js')];
    const packed = glue.map((file) => gzipSync(readFileSync(file)).length);
    expect(packed.reduce((sum, size) => sum + size, pack.bytes)).toBeLessThan(MOST_TO_FETCH);
  });

  test.each([
    'PocketSphinx 0.8+5prealpha+1',
    'sphinxbase 0.8+5prealpha+1',
    'Acoustic model en-us',
    'Pronouncing dictionary cmudict-en-us',
    'RNNoise',
    'Emscripten',
    'musl',
  ])('comes with the licence of %s', (part) => {
    const notice = notices.find((text) => text.startsWith(part));
    expect(notice).toMatch(/copyright/i);
    expect(notice).toMatch(/without warranty|any expressed or implied|any express or implied/i);
  });
});

describe('the pack', () => {
  let whole: Pack;
  beforeAll(async () => (whole = await unpack(new Uint8Array(bytesOf('ear.pack')))));

  test('holds the denoiser of the package that its glue comes from', () =>
    expect(sha256(whole.part('denoiser'))).toBe(sha256(readFileSync(join(DENOISER, 'rnnoise.wasm')))));

  test.each([
    ['mdef', 2_959_176],
    ['means', 838_732],
    ['variances', 838_732],
    ['sendump', 1_969_024],
    ['transition_matrices', 2_080],
  ])('gives back %s as long as it was', (name, bytes) => expect(whole.part(name)).toHaveLength(bytes));

  test('knows how words are said, each in every way', () => {
    const dictionary = dictionaryOf(whole);
    expect(dictionary('finish')).toEqual([{ name: 'finish', sounds: 'F IH N IH SH' }]);
    expect(dictionary('the').map(({ name }) => name)).toEqual(['the', 'the(2)']);
    expect(dictionary("isn't")).not.toEqual([]);
    expect(dictionary('grumblefroth')).toEqual([]);
  });
});
