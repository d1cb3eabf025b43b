/** What the maker can say or press while following along. The phrases for each are in `text/`. */
export const COMMANDS = [
  'done',
  'ready',
  'again',
  'back',
  'wait',
  'go on',
  'how long',
  'start',
  'finish',
  'one more minute',
  'new reading',
  'write down',
  'yes',
  'no',
  'wrong',
  'why',
  'where are we',
  'what can I say',
  'something went wrong',
  'stop listening',
] as const;
export type Command = (typeof COMMANDS)[number];
