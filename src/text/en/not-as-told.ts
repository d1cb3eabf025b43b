import type { Sentences } from '../sentences';
import { quoted } from './counted';

/** Why a mishap, a count of wrappers or a batch already running is not taken as it was told. */
export const notAsTold = {
  'cannot-have-happened': ({ yet }) =>
    `That cannot have happened ${yet ? 'yet' : 'any more'} where the batch stands. Choose from the list that is shown, or write a note.`,
  'told-already': ({ since }, f) =>
    `That was told on ${f.dateTime(since)} and counts once. Go on with what it says to do.`,
  'not-on-sheet': ({ sachet }) =>
    `${quoted(sachet)} is not a sachet of this kit’s sheet. Choose one from the sheet, or write a note.`,
  'not-that-kind': ({ sachet }) =>
    `${quoted(sachet)} is not a sachet of the kind that this is about. Choose another, or tell of a wrong sachet.`,
  'already-in': ({ sachet, since }, f) =>
    `The journal has ${quoted(sachet)} in the wine since ${f.dateTime(since)}. Look at the sachet: if it is still full, tell that instead.`,
  'not-in-yet': ({ sachet }) =>
    `The journal does not have ${quoted(sachet)} in the wine, so a full sachet is as it should be. Keep it for its turn.`,
  'journal-says-otherwise': ({ since }, f) =>
    `By the journal the yeast was seen at work on ${f.dateTime(since)}. Look for foam again, or strike the reading that was wrong, before you tell this.`,
  'which-sachet': () =>
    'Which sachet it was decides what comes next. Choose it by the name that is printed on it.',
  'how-many-litres': () =>
    'How much it was decides what comes next. Give it in figures, as near as you can tell.',
  'more-than-there-is': ({ litres, there }, f) =>
    `${f.litres(litres)} does not go with the ${f.litres(there)} in the vessel. Measure again, and check which unit is set.`,
  'wrappers-differ': ({ tooMany, tooFew }, f) =>
    [
      ...(tooMany.length > 0 ? [`Empty, though not in the wine by the journal: ${f.list(tooMany)}.`] : []),
      ...(tooFew.length > 0 ? [`In the wine by the journal, but no empty wrapper: ${f.list(tooFew)}.`] : []),
      'Look in the bin and under the table first; if it stays so, open “what happened” and tell it.',
    ].join(' '),
  'nothing-to-look-at': () => 'There is nothing left to look at again there. Go on with what is shown.',
  'joins-too-late': () =>
    'A batch that is running already is told before anything else. Start a new batch for it, and tell it there.',
  'yeast-and-place-disagree': ({ yeastIn }) =>
    yeastIn
      ? 'With its yeast in, a batch is fermenting or further. Choose how far it has come again.'
      : 'A batch that has come so far has its yeast in. Give the day of the yeast, or choose an earlier place.',
} satisfies Partial<Sentences>;
