import type { Moment } from '../../domain/calendar';
import type { Preferences } from '../../domain/preferences';
import type { Problem } from '../../domain/problem';
import type { Formats } from '../../text/formats';
import type { BenchText } from '../../text/text';
import type { Report } from '../../workflow/batch-event';
import type { BatchSnapshot } from '../../workflow/replay';
import type { HandsFree } from './hands-free';
import type { RestOfBench } from './rest-of-bench';

/** What a bench is handed, and what it asks of the world around it. */
export type BenchProps = {
  snapshot: BatchSnapshot;
  now: Moment;
  text: BenchText;
  formats: Formats;
  preferences: Preferences;
  onreport: (report: Report) => Promise<Problem | undefined>;
  onleave: () => void;
  onjournal: () => void;
  onlabels: () => void;
  hands: HandsFree;
  rest: RestOfBench;
  /** Inside a touch: lets the device sound, and says again what is asked. */
  onwake: () => void;
  onsafety: () => void;
  /** Puts a text on the clipboard; whether the device took it. */
  oncopy: (text: string) => Promise<boolean>;
};
