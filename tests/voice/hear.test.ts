import { beforeAll, describe, expect, test } from 'vitest';
import { MISHAP_IDS } from '../../src/procedure/mishap';
import { en } from '../../src/text/en';
import { listener } from '../../src/voice/ear/listener';
import { asHeard, grammarFor } from '../../src/voice/grammar-for';
import { hear, openEar, type Ear } from './hear';
import { readWav, type Sound } from './wav';

const grammarOf = (...sentences: string[]) =>
  `#JSGF V1.0;\ngrammar offered;\npublic <heard> = ${sentences.join(' | ')};\n`;
const DECOYS = `(${['the', 'nice', 'weather', 'we', 'are', 'having', 'in', 'garden', 'today', 'found', 'what']
  .map((word) => `/1e-24/ ${word}`)
  .join(' | ')})+`;
const PHRASES = ['that is done', 'wait a moment', 'once more please'];
const OFFERED = grammarOf(...PHRASES, DECOYS);

const clip = (name: string) => readWav(`tests/voice/clips/${name}.wav`);
const atRate = ({ samples, rate }: Sound, wanted: number): Sound => ({
  rate: wanted,
  samples: Float32Array.from({ length: Math.floor((samples.length * wanted) / rate) }, (_, at) => {
    const place = (at * rate) / wanted;
    const from = Math.floor(place);
    const [one = 0, other = 0] = samples.subarray(from, from + 2);
    return one + (other - one) * (place - from);
  }),
});

describe('the ear that is shipped', () => {
  let ear: Ear;
  beforeAll(async () => (ear = await openEar()));

  test('hears a phrase on offer, and how well it fits', () => {
    const [heard, ...more] = hear(ear, clip('that-is-done'), OFFERED, grammarOf(DECOYS));
    expect(more).toEqual([]);
    expect(heard?.hearing?.words).toBe('that is done');
    expect(heard?.hearing?.segments.map(({ word }) => word)).toEqual(['that', 'is', 'done']);
    expect(heard?.hearing?.margin).toBeGreaterThan(50);
    expect(heard?.seconds).toBeLessThan(2);
  });

  test.each([48_000, 44_100])('hears it at %i samples a second', (rate) => {
    const [heard] = hear(ear, atRate(clip('that-is-done'), rate), OFFERED);
    expect(heard?.hearing?.words).toBe('that is done');
  });

  test('takes talk for decoys, which fit it no worse', () => {
    const [heard] = hear(ear, clip('nice-weather'), OFFERED, grammarOf(DECOYS));
    expect(heard?.hearing?.words).toMatch(/^nice .* today$/);
    expect(heard?.hearing?.margin).toBeLessThan(5);
  });

  test('hears nothing in silence', () =>
    expect(hear(ear, { rate: 48_000, samples: new Float32Array(96_000) }, OFFERED)).toEqual([]));

  test('hears no phrase that is not on offer', () => {
    const [heard] = hear(ear, clip('that-is-done'), grammarOf('wait a moment', DECOYS));
    expect(heard?.hearing?.words).not.toBe('that is done');
  });

  test('is told a word that no dictionary has', () => {
    expect(ear.decoder.knows('fallbright')).toBe(false);
    expect(() => ear.decoder.setGrammar(grammarOf('fallbright'))).toThrow('No way to say: fallbright');
    ear.decoder.teach('fallbright', 'F AO L B R AY T');
    expect(() => ear.decoder.setGrammar(grammarOf('fallbright'))).not.toThrow();
  });

  test('knows every word that a maker can say: the commands, and what went wrong', () => {
    const mishaps = MISHAP_IDS.map((mishap) => en.whatHappened.mishaps[mishap].spoken);
    const words = [...Object.values(en.guide.commands).flat(), ...mishaps].flatMap((phrase) =>
      asHeard(phrase).split(' '),
    );
    expect([...new Set(words)].filter((word) => !ear.decoder.knows(word))).toEqual([]);
    expect(() => ear.decoder.setGrammar(grammarFor({ phrases: mishaps }))).not.toThrow();
  });

  test('refuses what is no grammar', () =>
    expect(() => ear.decoder.setGrammar('that is done')).toThrow('Not a grammar'));

  test('gives the features of a sound: thirteen numbers each hundredth of a second', () => {
    const rows = ear.decoder.features(new Int16Array(16_000).map((_, at) => 8000 * Math.sin(at / 5)));
    expect(rows.every(({ length }) => length === 13)).toBe(true);
    expect(rows.length).toBeGreaterThan(80);
  });

  test('hears it within 450 ms of its last sound, the decoding apart', () => {
    const { rate, samples } = clip('that-is-done');
    const end = samples.findLastIndex((sample) => Math.abs(sample) > 0.02) / rate;
    ear.decoder.setGrammar(OFFERED);
    let fed = 0;
    let told = 0;
    const ears = listener({
      ...ear,
      rate,
      tell: ({ type }) => {
        if (type === 'heard') told = fed;
      },
    });
    const chunk = rate / 100;
    const all = Float32Array.of(...samples, ...new Float32Array(rate));
    for (let at = 0; at < all.length; at += chunk) {
      fed = (at + chunk) / rate;
      ears.hear(all.subarray(at, at + chunk));
    }
    expect(told - end).toBeGreaterThan(0.2);
    expect(told - end).toBeLessThan(0.45);
  });
});
