import { BrowserEars } from '../voice/ear/browser-ears.browser';
import { BuiltInEars } from '../voice/ear/built-in-ears';
import { ChosenEars } from '../voice/ear/chosen-ears';
import { earWorker } from '../voice/ear/ear-worker.browser';
import { deviceMicrophone } from '../voice/ear/microphone.browser';
import type { ChosenPreferences } from './chosen-preferences.svelte';
import { EarsAtHand } from './ears-at-hand.svelte';
import { trustedScriptUrl } from './trusted-types.browser';

/** What hearing takes: fetched when our own ears are turned on for the first time. */
const PACK = 'ear/ear.pack';

/** The ears that the maker has chosen: our own, or the browser's. */
export function earsAtHand(language: string, preferences: ChosenPreferences): EarsAtHand {
  const builtIn = new BuiltInEars({
    microphone: deviceMicrophone,
    makeWorker: earWorker(trustedScriptUrl),
    pack: new URL(PACK, document.baseURI).href,
  });
  const browsers = new BrowserEars(language);
  return new EarsAtHand(
    new ChosenEars(() => (preferences.current.ear.who === 'browser' ? browsers : builtIn)),
    {
      current: () => preferences.current.ear,
      // Where it cannot be kept it counts until the app is closed.
      choose: (ear) => void preferences.choose({ ...preferences.current, ear }),
    },
  );
}
