import type { FirstProblem } from '../../domain/problem';
import { tell } from '../text';
import type { Sentences } from '../sentences';
import { counted, quoted, whatIsWrong } from './counted';

/** What can be wrong before any batch is opened. */
export const firstProblems: Sentences<FirstProblem['code']> = {
  'storage-refused': () =>
    'This browser lets nothing be kept, as in a private window. Open the guide in an ordinary window, or export the batch before you close it.',
  'storage-full': () =>
    'There is no room left on this device. Make room, then give the last entry again; all earlier ones are safe.',
  'written-elsewhere': () =>
    'Another window has gone on with this batch, and this one now shows the same. Look where it stands, and answer again.',
  'no-second-copy': ({ reason }, f) =>
    `The batch is kept, but not twice: its second copy failed. ${whatIsWrong(tell({ problems: firstProblems }, reason, f))} Export the batch now and again until there is one.`,
  'file-unreadable': () => 'The file could not be read. Check that it is still there, and choose it again.',
  'newer-format': ({ version }) =>
    `This file is of version ${String(version)}, which is newer than this guide. Bring the guide up to date, and open the file again.`,
  'header-lost': ({ entries }, f) =>
    `The beginning of this batch is lost, and with it which kit it is; ${counted(f, entries, 'entry', 'entries')} of its record remain. Open an exported copy of the batch.`,
  'no-such-place': ({ address }) => `There is nothing at ${quoted(address)}. Go back to the list of batches.`,
};
