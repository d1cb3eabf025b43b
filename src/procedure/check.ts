/** What is asked before an act may be done, apart from the gates. Each is a pure verdict in `judge.ts`. */
export const CHECKS = [
  'box complete',
  'warm enough to pitch',
  'low enough to move',
  'surface calm',
  'room for foam',
  'topped up',
  'may stabilise',
  'warm enough to fine',
  'may sweeten',
  'may bottle',
  'bottles ready',
] as const;
export type Check = (typeof CHECKS)[number];
