import type { EarProblem } from './ears';
import type { ListenerNews } from './listener';

/** What the page asks of the worker. A `turn` counts the times it was shut, so that what was heard before is known. */
export type ToWorker =
  | { type: 'start'; pack: string }
  | { type: 'microphone'; rate: number; sound: MessagePort }
  | { type: 'grammar'; grammar: string; against: string | undefined; turn: number }
  | { type: 'shut' }
  | { type: 'open'; turn: number };

export type FromWorker =
  | { type: 'progress'; done: number; total: number }
  | { type: 'starting' }
  | { type: 'ready' }
  | { type: 'news'; news: ListenerNews; turn: number }
  | { type: 'broken'; problem: EarProblem; detail: string };

/** The worker, as the page sees it. */
export type EarWorker = { post: (message: ToWorker, hand?: readonly MessagePort[]) => void; end: () => void };
/** Makes one, which tells its news, and once that it died. */
export type MakeEarWorker = (told: (message: FromWorker) => void, died: () => void) => EarWorker;
