import { flushSync } from 'svelte';
import type { Instant } from '../../src/domain/unit';
import type { GuidePorts } from '../../src/guide/lead';
import type { Words } from '../../src/guide/guide-text';
import type { After } from '../../src/voice/engine';
import type { Presence } from '../../src/ui/bench/hands-free';
import { LedHands } from '../../src/ui/bench/led-hands.svelte';

/** The real guide on a device that makes no sound: each line is captioned, and out at once. Time is ticked, and what would be done later is done, by hand. */
export function silentHands(words: Words, now: () => Instant, report: GuidePorts['report']) {
  let captions = $state.raw<readonly string[]>([]);
  let ticked: () => void = () => undefined;
  const presence: Presence = {
    get captions() {
      return captions;
    },
    sound: 'muted',
    awake: 'held',
    ear: undefined,
    turnEars: () => undefined,
  };
  const speaker: GuidePorts['speaker'] = {
    say(line) {
      captions = [...captions, line];
      return Promise.resolve('captioned');
    },
    hush: () => undefined,
  };
  const ticker: GuidePorts['ticker'] = {
    subscribe(tick) {
      ticked = tick;
      return () => (ticked = () => undefined);
    },
  };
  let late: () => void = () => undefined;
  const after: After = (_, then) => {
    late = then;
    return () => (late = () => undefined);
  };
  const ports = { speaker, ticker, tones: { play: () => undefined }, now, report, after };
  const hands = new LedHands(words, ports, presence);
  return Object.assign(hands, { tick: () => flushSync(() => ticked()), wait: () => flushSync(() => late()) });
}
