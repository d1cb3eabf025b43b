import type { Voice } from './engine';

/** The voices that speak a language, each once: some devices name one twice. */
export const speakersOf = (language: string, voices: readonly Voice[]): Voice[] => [
  ...new Map(
    voices
      .filter((voice) => mainPart(voice.language) === mainPart(language))
      .map((voice) => [voice.id, voice] as const),
  ).values(),
];

/** "en-GB", "en_GB" and "en" are one language to the ear. */
const mainPart = (language: string): string => language.toLowerCase().split(/[-_]/)[0] ?? '';
