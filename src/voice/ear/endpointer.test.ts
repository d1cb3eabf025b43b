import { describe, expect, test } from 'vitest';
import { ENDPOINTING, endpointer, type Frame } from './endpointer';

const SPEECH: Frame = { speech: 0.95, level: -25, cleanLevel: -25, floor: -60 };
const QUIET: Frame = { speech: 0.02, level: -60, cleanLevel: -88, floor: -60 };
const { hang, longest, pause, smooth, sustained } = ENDPOINTING;

/** What happened, by the frame, of so many frames of each kind. */
function turnsOf(...stretches: [frames: number, frame: Frame][]) {
  const ends = endpointer();
  const frames = stretches.flatMap(([count, frame]) => Array.from({ length: count }, () => frame));
  return frames
    .map((frame, at) => ({ at, ...ends.next(frame) }))
    .filter(({ turn }) => turn !== 'quiet' && turn !== 'going on' && turn !== 'pausing');
}

describe('an utterance', () => {
  test('begins once speech is sustained, and knows since when', () =>
    expect(turnsOf([50, QUIET], [20, SPEECH])).toEqual([
      { at: 50 + sustained - 1, turn: 'begun', past: sustained },
    ]));

  test('is over a hang after its last sound', () =>
    expect(turnsOf([50, QUIET], [60, SPEECH], [100, QUIET]).at(-1)).toEqual({
      at: 110 + hang - 1,
      turn: 'over',
      hung: hang,
      lead: 0,
    }));

  test('goes on over a pause within it', () =>
    expect(turnsOf([50, QUIET], [30, SPEECH], [hang - 2, QUIET], [30, SPEECH], [60, QUIET])).toHaveLength(2));

  test('tells while it pauses, each time, that it may be over as it is', () => {
    const ends = endpointer();
    const speak = (frames: number, frame: Frame) =>
      Array.from({ length: frames }, () => ends.next(frame).turn).filter((turn) => turn === 'pausing');
    expect(speak(40, SPEECH)).toEqual([]);
    expect(speak(pause - 1, QUIET)).toEqual([]);
    expect(speak(2, QUIET)).toEqual(['pausing']);
    expect(speak(10, SPEECH)).toEqual([]);
    expect(speak(60, QUIET)).toEqual(['pausing']);
  });

  test('of the maker is told from what others say, before it and after it', () => {
    const others: Frame = { speech: 0.9, level: -40, cleanLevel: -42, floor: -48 };
    const theirs: Frame = { ...SPEECH, floor: -48 };
    const turns = turnsOf([50, QUIET], [40, others], [60, theirs], [100, others]);
    const over = turns.find(({ turn }) => turn === 'over');
    expect(over).toMatchObject({ turn: 'over', hung: hang });
    // Loudness is smooth, and a few frames late.
    expect(over?.at).toBeLessThan(150 + hang + smooth);
    expect(over?.turn === 'over' ? over.lead : 0).toBeGreaterThan(40 - smooth);
  });

  test('that is too long is ended, and none begins before it is quiet', () => {
    const turns = turnsOf([longest * 2, SPEECH], [60, QUIET], [40, SPEECH], [60, QUIET]);
    expect(turns.map(({ turn }) => turn)).toEqual(['begun', 'over', 'begun', 'over']);
    expect(turns[1]?.at).toBeLessThan(longest + 1);
    expect(turns[2]?.at).toBeGreaterThan(longest * 2 + 60);
  });
});

describe('no utterance is', () => {
  test.each<[what: string, frames: number, frame: Frame]>([
    ['a click', sustained - 1, SPEECH],
    ['noise that only sounds like speech', 200, { ...SPEECH, level: -59 }],
    ['noise that does not', 200, { ...SPEECH, speech: 0.3 }],
    ['a voice behind a wall', 200, { ...SPEECH, cleanLevel: -70 }],
  ])('%s', (_, frames, frame) => expect(turnsOf([50, QUIET], [frames, frame], [60, QUIET])).toEqual([]));

  test('a cough: it begins and comes to nothing', () =>
    expect(turnsOf([50, QUIET], [10, SPEECH], [60, QUIET]).map(({ turn }) => turn)).toEqual([
      'begun',
      'nothing',
    ]));
});
