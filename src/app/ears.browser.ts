import { BuiltInEars } from '../voice/ear/built-in-ears';
import { earWorker } from '../voice/ear/ear-worker.browser';
import type { Ears } from '../voice/ear/ears';
import { deviceMicrophone } from '../voice/ear/microphone.browser';
import { trustedScriptUrl } from './trusted-types.browser';

/** Ears of our own, on this device. Nothing is asked for, made or fetched before they are turned on. */
export const builtInEars = (): Ears =>
  new BuiltInEars({
    microphone: deviceMicrophone,
    makeWorker: earWorker(trustedScriptUrl),
    pack: new URL('ear/ear.pack', document.baseURI).href,
  });
