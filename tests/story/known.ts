import { RULES } from '../../src/domain/gates/passing';
import type { Check } from '../../src/procedure/check';
import type { Contents } from '../../src/procedure/contents';
import { nothingYet, type Addition, type Facts } from '../../src/procedure/facts';
import { judge } from '../../src/procedure/judge';
import type { Gate } from '../../src/procedure/phase';
import { hedge } from './refused';
import { answersTold, codesOf, momentAt, r, readingTold, type Told } from './told';

/** Yeast thirteen days ago, two dry readings two days apart, and the gate passed on them an hour after the second. */
const PITCHED = momentAt(-13 * 24);
export const DRY: Told[] = [r(-48, 9940), r(0, 9940)];
export const PASSED = { ...momentAt(1), rules: RULES, readings: [1, 2] };

/** What is known of a batch that has just been proven dry, but for what is told otherwise. */
export const known = (rest: Partial<Facts> = {}, told: Told[] = DRY, now = 2): Facts => ({
  ...nothingYet(PITCHED, 18),
  now: momentAt(now),
  entries: 40,
  pitched: PITCHED,
  readings: told.map(readingTold),
  passed: { 'proving dry': PASSED },
  ...rest,
});

export const added = (sachet: string, hours: number, ...contents: Contents[]): Addition => ({
  ...momentAt(hours),
  entry: 30,
  sachet,
  contents,
  phase: 'stabilise',
});

const WEEK = 7 * 24;
/** When the baseline of a wine at rest was read, in the story's hours; and a week after it. */
const BASELINE_AT = 10;
export const RESTED_AT = BASELINE_AT + WEEK;
export const AT_REST: Told[] = [...DRY, r(BASELINE_AT, 9940), r(RESTED_AT, 9940)];

/** What is known of a wine that has rested for its week and was proven still, but for what is told otherwise. */
export const rested = (rest: Partial<Facts> = {}, told: Told[] = AT_REST): Facts =>
  known(
    {
      baseline: 3,
      judgements: answersTold('gas', [false, false], RESTED_AT),
      passed: {
        'proving dry': PASSED,
        'proving still': { ...momentAt(RESTED_AT + 2), rules: RULES, readings: [3, 4] },
      },
      ...rest,
    },
    told,
    RESTED_AT + 3,
  );

/** "open", or the code of every clause that fails where a question is asked. */
export const askedOf = (question: Gate | Check, facts: Facts, sheet = hedge): ReturnType<typeof codesOf> =>
  codesOf(judge(question, sheet, facts));
