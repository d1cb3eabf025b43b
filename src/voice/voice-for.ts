import type { Voice } from './engine';

/** The voice to speak a language with: the chosen one, else one that needs no network, else any that speaks it. */
export function voiceFor(voices: readonly Voice[], language: string, chosen?: string): Voice | undefined {
  const speakers = voices.filter((voice) => mainPart(voice.language) === mainPart(language));
  return (
    voices.find(({ id }) => id === chosen) ??
    speakers.find(({ local, language: spoken }) => local && spoken === language) ??
    speakers.find(({ local }) => local) ??
    speakers[0]
  );
}

/** "en-GB", "en_GB" and "en" are one language to the ear. */
const mainPart = (language: string): string => language.toLowerCase().split(/[-_]/)[0] ?? '';
