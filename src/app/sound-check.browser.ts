import type { SoundPreferences } from '../domain/sound-preferences';
import { Live } from '../ui/live.svelte';
import { after } from '../voice/after.browser';
import { NO_ENGINE } from '../voice/no-engine';
import { SoundCheck } from '../voice/sound-check';
import { speechEngine } from '../voice/speech-engine.browser';
import { VoiceSearch } from '../voice/voice-search';
import type { Ports } from './ports';

/** The device's voices for a language, and a trial of the one that is chosen. */
export function soundCheck(language: string, preferences: () => SoundPreferences): Ports['soundCheck'] {
  const engine = speechEngine() ?? NO_ENGINE;
  const search = new VoiceSearch(engine, after, language);
  const { say, hush } = new SoundCheck({ engine, after, language, preferences });
  return { voices: new Live(search.found, search.watch), say, hush };
}
