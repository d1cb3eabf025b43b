import type { BenchText, Text } from '../text/text';

/** The words of the bench, and of the way to it. */
export const benchText = (): Promise<BenchText> => import('../text/en-bench').then(({ enBench }) => enBench);

/** Every word of the language. */
export const wholeText = (): Promise<Text> => import('../text/en').then(({ en }) => en);
