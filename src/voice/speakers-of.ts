import type { Voice } from './engine';

/** The voices that speak a language, each once: some devices name one twice, and speak with the first. */
export const speakersOf = (language: string, voices: readonly Voice[]): Voice[] =>
  voices
    .filter((voice) => mainPart(voice.language) === mainPart(language))
    .filter(({ id }, index, all) => all.findIndex((voice) => voice.id === id) === index);

/** "en-GB", "en_GB" and "en" are one language to the ear. */
const mainPart = (language: string): string => language.toLowerCase().split(/[-_]/)[0] ?? '';
