import type { Formats } from '../text/formats';
import type { guide } from '../text/en/guide';
import type { Text } from '../text/text';

/** The words that the guide needs: those of the acts, gates and problems, and its own. */
export type GuideText = Text & { guide: typeof guide };

/** Words, and how this maker's numbers are said. */
export type Words = { text: GuideText; formats: Formats };
