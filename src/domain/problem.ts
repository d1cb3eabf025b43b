import type { Gravity } from './gravity';
import type { Counting } from './parse-within';
import type { TemperatureScale } from './temperature';
import type { Celsius, Instant, Litres } from './unit';
import type { VolumeUnit } from './volume';

/** What was typed and cannot be used. */
type Misread =
  | { code: 'gravity-misread'; given: string; lowest: Gravity; highest: Gravity }
  | { code: 'temperature-misread'; given: string; scale: TemperatureScale; lowest: Celsius; highest: Celsius }
  | { code: 'volume-misread'; given: string; unit: VolumeUnit; lowest: Litres; highest: Litres }
  | { code: 'count-misread'; given: string; highest: number }
  | { code: 'number-misread'; given: string; counting: Counting; lowest: number; highest: number }
  | { code: 'time-misread'; given: string }
  | { code: 'in-the-future'; takenAt: Instant }
  | { code: 'before-the-batch'; takenAt: Instant; begun: Instant }
  | { code: 'sample-out-of-reach'; gravity: Gravity; celsius: Celsius }
  | { code: 'water-misread'; gravity: Gravity; celsius: Celsius };

/** Questions about a reading that is probably wrong: it is taken when the maker says that it is right. */
type Questioned =
  { code: 'reading-jumped'; by: Gravity; hours: number } | { code: 'reading-went-up'; by: Gravity };

/** Clauses of the dryness gate. */
type NotFinished =
  | { code: 'not-dry'; gravity: Gravity; limit: Gravity }
  | { code: 'was-not-dry'; gravity: Gravity; limit: Gravity; takenAt: Instant }
  | { code: 'wine-too-cold'; wine: Celsius; atLeast: Celsius; entry: number }
  | { code: 'sample-gassy'; entry: number }
  | { code: 'last-reading-back-dated' }
  | { code: 'too-few-readings'; counted: number; wanted: number; hours: number; hoursWanted: number }
  | { code: 'still-falling'; by: Gravity; resolution: Gravity }
  | { code: 'reading-rose'; by: Gravity; resolution: Gravity }
  | { code: 'cannot-tell-yet'; fall: Gravity; resolution: Gravity }
  | { code: 'too-soon'; day: number; minimumDays: number }
  | { code: 'no-yeast-yet' };

/** Clauses of the other gates and checks. */
type NotYet =
  | { code: 'box-not-checked' }
  | { code: 'sachets-missing'; missing: readonly string[] }
  | { code: 'hydrometer-not-checked' }
  | { code: 'vessel-too-small'; brim: Litres; batch: Litres }
  | { code: 'no-start-reading' }
  | { code: 'under-stirred'; seconds: number; wanted: number }
  | { code: 'start-outside'; gravity: Gravity; lowest: Gravity; highest: Gravity; litresOver: Litres }
  | { code: 'must-not-measured' }
  | { code: 'must-too-cold'; must: Celsius; lowest: Celsius; highest: Celsius }
  | { code: 'must-too-warm'; must: Celsius; lowest: Celsius; highest: Celsius }
  | { code: 'not-alive-yet'; hours: number }
  | { code: 'not-low-enough-to-move'; gravity: Gravity; limit: Gravity }
  | { code: 'dryness-not-proven' }
  | { code: 'dryness-stale'; hours: number; allowed: number }
  | { code: 'added-since'; sachet: string }
  | { code: 'stabilisers-not-in-hand'; missing: readonly string[] }
  | { code: 'surface-rushes' }
  | { code: 'no-room-for-foam'; room: Litres; wanted: Litres }
  | { code: 'gap-not-measured' }
  | { code: 'gap-too-wide'; millimetres: number; atMost: number }
  | { code: 'dryness-in-doubt'; since: Instant }
  | { code: 'stabilisers-not-all-in'; missing: readonly string[] }
  | { code: 'gas-not-tested'; passes: number; wanted: number }
  | { code: 'gassy'; failures: number }
  | { code: 'fining-too-cold'; wine: Celsius; atLeast: Celsius }
  | { code: 'wine-not-measured' }
  | { code: 'clearing-too-short'; day: number; minimumDays: number }
  | { code: 'not-looked-at'; days: number; wanted: number }
  | { code: 'cloudy' }
  | { code: 'no-baseline' }
  | { code: 'no-reading-since-baseline'; days: number; wanted: number }
  | { code: 'still-moving'; by: Gravity; resolution: Gravity }
  | { code: 'wine-not-proven-still' }
  | { code: 'not-counted' }
  | { code: 'too-few-bottles'; bottles: number; wanted: number }
  | { code: 'too-few-closures'; closures: number; wanted: number }
  | { code: 'cork-in-screw-thread' }
  | { code: 'glass-in-wine' };

/** An event that the batch does not take where it stands. */
type OutOfPlace =
  | { code: 'already-done' }
  | { code: 'not-this-act' }
  | { code: 'clock-not-running' }
  | { code: 'clock-already-running' }
  | { code: 'clock-not-over'; seconds: number }
  | { code: 'nothing-to-correct' }
  | { code: 'batch-has-ended' }
  | { code: 'no-such-way-back' }
  | { code: 'earlier-than-the-last' }
  | { code: 'reason-too-short' }
  | { code: 'not-by-voice' }
  | { code: 'does-not-yield'; clause: string }
  | { code: 'cannot-be-left-out'; sachet: string }
  | { code: 'not-safe-to-leave'; why: Unsafe; atMostDays: number }
  | { code: 'not-the-next-rung' };

/** Something that went wrong, or a batch already running, that cannot be as it was told. */
type NotAsTold =
  | { code: 'cannot-have-happened'; yet: boolean }
  | { code: 'told-already'; since: Instant }
  | { code: 'not-on-sheet'; sachet: string }
  | { code: 'not-that-kind'; sachet: string }
  | { code: 'already-in'; sachet: string; since: Instant }
  | { code: 'not-in-yet'; sachet: string }
  | { code: 'journal-says-otherwise'; since: Instant }
  | { code: 'which-sachet' }
  | { code: 'how-many-litres' }
  | { code: 'more-than-there-is'; litres: Litres; there: Litres }
  | { code: 'wrappers-differ'; tooMany: readonly string[]; tooFew: readonly string[] }
  | { code: 'nothing-to-look-at' }
  | { code: 'joins-too-late' }
  | { code: 'yeast-and-place-disagree'; yeastIn: boolean };

/** Why a batch cannot be left alone for so long. */
export type Unsafe =
  | 'away-ends-before-it-begins'
  | 'yeast-is-starting'
  | 'ferment-too-long'
  | 'finished-unstabilised'
  | 'between-stabilising-and-fining'
  | 'clearing-too-long'
  | 'sweetened-too-long'
  | 'bottles-open';

/** A kit sheet, batch file or address that cannot be used. `path` says where in it, `given` what stands there. */
type Unreadable =
  | { code: 'not-json' }
  | { code: 'not-a-kit-sheet' }
  | { code: 'not-a-batch-file' }
  | { code: 'newer-format'; version: number }
  | { code: 'sheet-refused'; faults: readonly SheetFault[] }
  | { code: 'batch-file-damaged'; path: string; given: string }
  | { code: 'report-misread'; path: string; given: string }
  | { code: 'journal-gap'; entry: number }
  | { code: 'header-lost'; entries: number }
  | { code: 'journal-mismatch'; entry: number; type: string; reason: Problem }
  | { code: 'no-such-batch' }
  | { code: 'no-such-place'; address: string };

/** What the device refuses. */
type Device =
  | { code: 'storage-refused' }
  | { code: 'storage-full' }
  | { code: 'written-elsewhere' }
  | { code: 'no-second-copy'; reason: DeviceProblem }
  | { code: 'file-unreadable' };

/** One thing wrong with a kit sheet. */
export type SheetFault = { path: string; given: string; rule: SheetRule; allowed?: string };

export type SheetRule =
  | 'wrong-kind'
  | 'missing'
  | 'unknown-key'
  | 'outside'
  | 'not-one-of'
  | 'twice'
  | 'may-not-go-there'
  | 'lowest-above-highest'
  | 'no-yeast'
  | 'sweetens-without-sorbate'
  | 'sorbate-without-sulphite'
  | 'too-much-sorbate'
  | 'too-much-sulphite'
  | 'order-twice'
  | 'reserve-too-large'
  | 'clear-move-without-vessel'
  | 'unknown-act';

/** What can go wrong in a way the maker can act on. Facts only; `text/` finds the words. */
export type Problem =
  Misread | Questioned | NotFinished | NotYet | OutOfPlace | NotAsTold | Unreadable | Device;

/** What a device refuses, or has lost. */
export type DeviceProblem = Device | Extract<Unreadable, { code: 'header-lost' | 'newer-format' }>;

/** What can come up before any batch is opened. */
export type FirstProblem = DeviceProblem | Extract<Unreadable, { code: 'no-such-place' }>;

/** For devices, where no caller can decide. Thrown by adapters, caught in `app/`; the floors below return problems. */
export class ProblemError extends Error {
  override name = 'ProblemError';
  constructor(
    readonly problem: DeviceProblem,
    cause?: unknown,
  ) {
    super(problem.code, { cause });
  }
}
