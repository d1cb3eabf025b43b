import { describe, expect, test } from 'vitest';
import type { Decoder } from './decoder';
import { FRAME, type Denoiser } from './denoiser';
import { listener, type ListenerNews } from './listener';

const RATE = 48_000;
const SECOND = 1;

/** Takes what is loud for speech, and leaves it as it is. */
const loudIsSpeech: Denoiser = {
  clean(frame, to) {
    to.set(frame);
    return frame.some((sample) => Math.abs(sample) > 0.05) ? 1 : 0;
  },
};

function listening() {
  const decoded: number[] = [];
  const grammars: string[] = [];
  const news: ListenerNews[] = [];
  const decoder: Decoder = {
    setGrammar: (grammar) => void grammars.push(grammar),
    decode: (samples) => {
      decoded.push(samples.length / 16_000);
      return { words: 'yes', segments: [], score: -1, seconds: samples.length / 16_000 };
    },
  };
  const ears = listener({ rate: RATE, denoiser: loudIsSpeech, decoder, tell: (one) => news.push(one) });
  const sound = (seconds: number, loudness: number) => {
    for (let at = 0; at < seconds * RATE; at += FRAME)
      ears.hear(
        Float32Array.from({ length: FRAME }, (_, n) => loudness * Math.sin((at + n) / 20 + Math.sin(at + n))),
      );
  };
  return {
    ears,
    decoded,
    grammars,
    news,
    speak: (seconds: number, loudness = 0.3) => sound(seconds, loudness),
    wait: (seconds: number, noise = 0.001) => sound(seconds, noise),
  };
}

test('what is said is decoded once, with a little before and after it', () => {
  const { decoded, news, speak, wait } = listening();
  wait(SECOND);
  speak(SECOND);
  wait(SECOND);
  expect(decoded).toHaveLength(1);
  expect(decoded[0]).toBeGreaterThan(1.3);
  expect(decoded[0]).toBeLessThan(1.6);
  expect(news.filter(({ type }) => type === 'heard')).toMatchObject([{ hearing: { words: 'yes' } }]);
});

test('what is said in two breaths is decoded whole', () => {
  const { decoded, news, speak, wait } = listening();
  wait(SECOND);
  speak(0.6);
  wait(0.3);
  speak(0.6);
  wait(SECOND);
  const heard = news.filter((one) => one.type === 'heard');
  expect(heard).toHaveLength(1);
  expect(heard[0]?.seconds).toBeGreaterThan(1.7);
  expect(heard[0]?.hearing?.seconds).toBe(decoded.at(-1));
});

test('who talks longer than any phrase takes is heard, and not decoded', () => {
  const { decoded, news, speak, wait } = listening();
  wait(SECOND);
  speak(5);
  wait(SECOND);
  expect(decoded).toEqual([]);
  const heard = news.filter(({ type }) => type === 'heard');
  expect(heard).toEqual([expect.objectContaining({ hearing: undefined })]);
});

test('who never pauses is cut off, and not heard before it is quiet', () => {
  const { decoded, news, speak, wait } = listening();
  wait(SECOND);
  speak(9);
  expect(news.filter(({ type }) => type === 'heard')).toHaveLength(1);
  wait(SECOND);
  speak(SECOND);
  wait(SECOND);
  expect(decoded).toHaveLength(1);
});

describe('while we speak', () => {
  test('nothing is heard', () => {
    const { ears, news, speak, wait } = listening();
    ears.shut();
    speak(SECOND);
    wait(SECOND);
    expect(news).toEqual([]);
  });

  test('what was being said when we began is forgotten', () => {
    const { ears, decoded, speak, wait } = listening();
    wait(SECOND);
    speak(SECOND);
    ears.shut();
    ears.open();
    wait(2 * SECOND);
    expect(decoded).toEqual([]);
  });

  test('the echo of our last words is not heard either', () => {
    const { ears, decoded, speak, wait } = listening();
    ears.shut();
    ears.open();
    speak(0.3);
    wait(SECOND);
    expect(decoded).toEqual([]);
  });

  test('and afterwards all is heard as before', () => {
    const { ears, decoded, speak, wait } = listening();
    ears.shut();
    ears.open();
    wait(SECOND);
    speak(SECOND);
    wait(SECOND);
    expect(decoded).toHaveLength(1);
  });
});

test('words begun under one grammar are not understood by the next', () => {
  const { ears, decoded, grammars, speak, wait } = listening();
  wait(SECOND);
  speak(0.5);
  ears.listenFor('another');
  wait(SECOND);
  expect(grammars).toEqual(['another']);
  expect(decoded).toEqual([]);
});

describe('the room', () => {
  const roomAfter = (noise: number) => {
    const { news, speak, wait } = listening();
    wait(2 * SECOND, noise);
    speak(SECOND, 0.3);
    wait(SECOND, noise);
    const heard = news.find(({ type }) => type === 'heard');
    const rooms = news.filter((one) => one.type === 'room');
    return { heard, rooms, last: rooms.at(-1) };
  };

  test('is told five times a second', () => expect(roomAfter(0.01).rooms).toHaveLength(20));

  // A sine of amplitude a has the power a² / 2.
  test.each([
    [0.003, 40],
    [0.02, 23.5],
    [0.04, 17.5],
  ])('with noise of %f lets speech stand out by %f dB', (noise, snr) => {
    const { heard, last } = roomAfter(noise);
    expect(Math.abs((last?.snr ?? 0) - snr)).toBeLessThan(2);
    expect(heard).toMatchObject({ snr: last?.snr });
    expect(last?.unreliable).toBe(false);
  });

  test('is told to be unreliable once the noise has grown', () => {
    const { news, speak, wait } = listening();
    wait(2 * SECOND);
    speak(SECOND, 0.1);
    wait(4 * SECOND, 0.04);
    expect(news.at(-1)).toMatchObject({ type: 'room', unreliable: true });
  });
});
