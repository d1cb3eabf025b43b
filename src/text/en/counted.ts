import type { Formats } from '../formats';

/** "1 bottle", "30 bottles". */
export const counted = (formats: Formats, count: number, one: string, several = `${one}s`): string =>
  `${formats.count(count)} ${count === 1 ? one : several}`;

/** “these”, “words”, “in quotes”: what is printed or typed is given exactly. */
export const quoted = (words: string): string => `“${words}”`;
