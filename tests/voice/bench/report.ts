import type { Result, Talked } from './measure';
import { percent, quantile, tally, type Outcome } from './tally';

const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;

export const table = (head: readonly string[], rows: readonly (readonly string[])[]): string =>
  [row(head), row(head.map(() => '---')), ...rows.map(row)].join('\n');

/** What came of recordings, as cells: of all so many, right, asked, wrong, asked amiss, missed. */
export function cells(results: readonly { outcome: Outcome }[]): string[] {
  const { all, right, asked, wrong, missed, ...counts } = tally(results.map(({ outcome }) => outcome));
  const amiss = counts['asked amiss'];
  return [String(all), ...[right, asked, wrong, amiss, missed].map((part) => percent(part, all))];
}

export const CELLS = ['said', 'right', 'asked', 'wrong', 'asked amiss', 'missed'];

/** Of so many, none may be seen by luck: 95 % of the time there are no more than this many an hour. */
function atMost(seen: number, hours: number): number {
  const upper = [3, 4.74, 6.3, 7.75, 9.15, 10.51, 11.84];
  return (upper[seen] ?? seen + 1.96 * Math.sqrt(seen) + 1.92) / hours;
}

export const talkCells = ({ hours, acted, asked }: Talked): string[] => [
  hours.toFixed(2),
  String(acted),
  (acted / hours).toFixed(1),
  atMost(acted, hours).toFixed(1),
  (asked / hours).toFixed(1),
];
export const TALK_CELLS = ['hours', 'acted', 'an hour', 'at most (95 %)', 'asked an hour'];

/** Milliseconds from the end of the words to the act. */
export function latency(results: readonly Result[]): string {
  const heard = results.filter(({ outcome, late }) => outcome === 'right' && Number.isFinite(late));
  const all = heard.map(({ late }) => late * 1000);
  const decoding = heard.map((each) => each.decoding * 1000);
  const at = (values: number[], share: number) => String(Math.round(quantile(values, share)));
  return `p50 ${at(all, 0.5)} ms, p90 ${at(all, 0.9)} ms, of which decoding p50 ${at(decoding, 0.5)} ms, p90 ${at(decoding, 0.9)} ms`;
}
