import type { Text } from '../text/text';

/** Every word of the language, fetched once the first screen stands. */
export const wholeText = (): Promise<Text> => import('../text/en').then(({ en }) => en);
