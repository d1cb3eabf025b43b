import { answersSince, type Judgement } from '../judgement';
import { verdictOn, type Verdict } from '../verdict';

const PASSES = 2;

/** Is the gas out? The shaken wine no livelier than plain water, twice running, since a moment. */
export function gasGone(judgements: readonly Judgement[], since: number): Verdict {
  const answers = answersSince(judgements, 'gas', since);
  const lively = answers.findLastIndex(({ yes }) => yes);
  const passes = answers.length - 1 - lively;
  const failures = answers.filter(({ yes }) => yes).length;
  return verdictOn([
    passes === 0 && failures > 0 && { code: 'gassy', failures },
    passes < PASSES && { code: 'gas-not-tested', passes, wanted: PASSES },
  ]);
}
