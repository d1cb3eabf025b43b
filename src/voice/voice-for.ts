import type { Voice } from './engine';
import { speakersOf } from './speakers-of';

/** The voice to speak a language with: the chosen one, else one that needs no network, else any that speaks it. */
export function voiceFor(voices: readonly Voice[], language: string, chosen?: string): Voice | undefined {
  const speakers = speakersOf(language, voices);
  return (
    voices.find(({ id }) => id === chosen) ??
    speakers.find(({ local, language: spoken }) => local && spoken === language) ??
    speakers.find(({ local }) => local) ??
    speakers[0]
  );
}
