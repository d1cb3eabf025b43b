import type { Instant } from '../domain/unit';
import type { Words } from '../guide/guide-text';
import type { BenchText } from '../text/text';
import { workerTicker } from '../timers/ticker.browser';
import { ScreenAwake } from '../timers/wake-lock';
import { wakeDevice } from '../timers/wake-lock.browser';
import { LedHands } from '../ui/bench/led-hands.svelte';
import { after } from '../voice/after.browser';
import { NO_ENGINE } from '../voice/no-engine';
import { speechEngine } from '../voice/speech-engine.browser';
import type { Tones } from '../voice/tones';
import { webTones } from '../voice/tones.browser';
import { vibration } from '../voice/vibration.browser';
import type { Journal, Told } from '../workflow/journal';
import { DevicePresence } from './device-presence.svelte';
import type { ChosenPreferences } from './chosen-preferences.svelte';
import { earsAtHand } from './ears.browser';
import { takeMediaKeys } from './media-keys.browser';
import type { LeadByEar } from './ports';
import { trustedScriptUrl } from './trusted-types.browser';

/** A guide with this device's voice, tones, motor, ticks and screen. One leads at a time; touches wake the device. */
export function handsFreeOf(text: BenchText, now: () => Instant, preferences: ChosenPreferences): LeadByEar {
  const sound = () => preferences.current.sound;
  const ears = earsAtHand(text.language, preferences);
  const sounding = webTones(sound);
  const presence = new DevicePresence({
    engine: speechEngine() ?? NO_ENGINE,
    after,
    text,
    preferences: sound,
    wakeTones: () => sounding.wake(),
    awake: new ScreenAwake(wakeDevice()),
    ears,
  });
  const wake = () => presence.wake();
  // The touch that led to the bench may have been while this was fetched.
  if ('userActivation' in navigator && navigator.userActivation.hasBeenActive) wake();
  window.addEventListener('click', wake, { capture: true });
  window.addEventListener('keydown', wake, { capture: true });
  const tones = inTurn(sounding, vibration);
  const ticker = workerTicker(trustedScriptUrl);

  return (words: Words, journal: Pick<Journal, 'report'>) => {
    presence.begin();
    const handBackMediaKeys = takeMediaKeys();
    const { speaker } = presence;
    const report = (told: Told) => journal.report(told);
    const hands = new LedHands(
      words,
      { speaker, tones, ticker, now, report, after, ears: ears.ears },
      presence,
    );
    return {
      hands,
      leave() {
        handBackMediaKeys();
        hands.stop();
        presence.leave();
      },
    };
  };
}

/** A tone is heard as soon as ever, but what was answered is on its way to the disk before. */
const inTurn = (...players: readonly Tones[]): Tones => ({
  play: (tone) => void after(0, () => players.forEach((player) => player.play(tone))),
});
