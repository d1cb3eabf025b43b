import type { Formats } from '../text/formats';
import type { Text } from '../text/text';

/** Words, and how this maker's numbers are said. */
export type Words = { text: Text; formats: Formats };
