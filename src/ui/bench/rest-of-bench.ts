import type { Text } from '../../text/text';
import type { Later } from '../later.svelte';
import type { laterParts } from './later-parts';

/** The rest of the bench, with all the words: everything that the first act of a batch does without. */
export type RestOfBench = Pick<Later<{ parts: typeof laterParts; text: Text }>, 'now' | 'failed' | 'bring'>;
