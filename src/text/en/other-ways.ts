import { quoted } from './counted';

/** What the pads and links are called that lead to a page beside the procedure. */
export const otherWays = {
  label: 'Other ways',
  inSpiteOf: 'go on in spite of this',
  whyNot: 'why not this one?',
  sugarTest: 'enter a sugar test',
  leaveOut: (printed: string) => `leave out ${quoted(printed)}`,
  help: 'help a stuck wine',
  join: 'it is running already',
  away: 'I am away for a while',
};
