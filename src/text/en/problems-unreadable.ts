import type { Sentences } from '../sentences';
import { counted, quoted } from './counted';
import { asPlain, faultLines } from './faults';

/** A kit sheet, a batch file or a record that cannot be used. */
export const unreadable = {
  'not-json': () =>
    'This file is not whole, or is of another kind. Choose a kit sheet or a batch file, or fetch it again.',
  'not-a-kit-sheet': () =>
    'This file is not a kit sheet of this guide. Choose one that was exported as a kit sheet.',
  'not-a-batch-file': () =>
    'This file is not a batch of this guide. Choose one that was exported as a batch.',
  'sheet-refused': ({ faults }, f) =>
    [
      `This kit sheet cannot be used yet. Put ${counted(f, faults.length, 'thing')} right in it, and open it again.`,
      ...faultLines(faults),
    ].join('\n'),
  'batch-file-damaged': ({ path, given }) =>
    `This batch file is damaged at ${path || 'its beginning'}, where it has ${quoted(asPlain(given))}. Nothing was changed here. Use another copy of the file.`,
  'report-misread': ({ path, given }) =>
    `The entry could not be kept: at ${path || 'its beginning'} it has ${quoted(asPlain(given))}. Give it again; nothing else was changed.`,
  'journal-gap': ({ entry }) =>
    `Entry ${String(entry)} of the record is missing. Everything before it is safe. Export what is there, and go on from it, or open an older export.`,
  'no-such-batch': () =>
    'There is no such batch on this device. Go back to the list of batches, or open its file.',
} satisfies Partial<Sentences>;
