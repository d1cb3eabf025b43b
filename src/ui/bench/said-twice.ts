import type { GuideContext } from '../../guide/guide-context';
import type { Stage } from '../../guide/guide-events';
import { ownLines } from '../../guide/own-lines';

/** Pages whose own words are all that the guide says by itself, in the largest letters there. */
const SHOWS_ITS_LINES: ReadonlySet<Stage> = new Set<Stage>(['at a gate', 'reading back']);

/** Whether a caption stands on the page beneath it as well: where there is little room, it is not shown twice. */
export const saidTwice = (context: GuideContext, caption: string): boolean =>
  SHOWS_ITS_LINES.has(context.stage) && ownLines(context).includes(caption);
