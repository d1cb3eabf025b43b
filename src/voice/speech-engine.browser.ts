import type { Engine } from './engine';

/** The device's own voices, by way of `speechSynthesis`; nothing where there is none. */
export function speechEngine(): Engine | undefined {
  if (!('speechSynthesis' in window)) return undefined;
  const synthesis = window.speechSynthesis;
  // Some browsers collect an utterance that nobody holds, and then never say that it ended.
  let held: SpeechSynthesisUtterance | undefined;
  return {
    voices: () =>
      synthesis.getVoices().map(({ voiceURI, name, lang, localService }) => ({
        id: voiceURI,
        name,
        language: lang,
        local: localService,
      })),
    speak({ words, language, voice, rate, volume }, { started, ended, failed }) {
      held = new SpeechSynthesisUtterance(words);
      const chosen = synthesis.getVoices().find(({ voiceURI }) => voiceURI === voice);
      held.voice = chosen ?? null;
      held.lang = chosen?.lang ?? language;
      held.rate = rate;
      held.volume = volume;
      held.onstart = started;
      held.onend = ended;
      held.onerror = failed;
      synthesis.speak(held);
    },
    cancel() {
      held = undefined;
      synthesis.cancel();
    },
  };
}
