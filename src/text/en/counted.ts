import type { Formats } from '../formats';

/** "1 bottle", "30 bottles". */
export const counted = (formats: Formats, count: number, one: string, several = `${one}s`): string =>
  `${formats.count(count)} ${count === 1 ? one : several}`;

/** “these”, “words”, “in quotes”: what is printed or typed is given exactly. */
export const quoted = (words: string): string => `“${words}”`;

/** A limit that a gravity must come down to. */
export const lower = (limit: string): string => `${limit} or lower (lower is later)`;

/** What is wrong, of a problem inside a problem: its first sentence, since what to do is the outer one's to say. */
export const whatIsWrong = (told: string): string => told.split(/(?<=\.) /)[0] ?? '';
