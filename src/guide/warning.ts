import { isIrreversible, type Act } from '../procedure/step';
import type { BenchText } from '../text/text';
import type { ActInWords, Situation } from './situation';

/** What a warning is remembered by: a sachet's each time, any other hazard once in a stage and a visit. */
export function warningOf({ place, now }: Situation): string | undefined {
  if (!now) return undefined;
  if (isIrreversible(now.act)) return now.act.id;
  return now.words.caution === undefined ? undefined : `${place}: ${now.words.caution}`;
}

/** What can hurt, and what to do about it now: a sachet is taken up, and its name is read. */
export function hazardsOf({ act, words }: ActInWords, { guide }: BenchText): string[] {
  const hazard = words.caution === undefined ? [] : [words.caution];
  return isIrreversible(act) ? [...hazard, finality(act, guide)] : hazard;
}

export const actionOf = ({ act }: ActInWords, { guide }: BenchText): string | undefined =>
  act.kind === 'add' ? guide.warning.takeUp(act.sachet) : undefined;

/** The hazard, then the action, then the word that it waits for. */
export function warningLines(told: ActInWords, text: BenchText): string[] {
  const action = actionOf(told, text);
  const { say, commands } = text.guide;
  return [...hazardsOf(told, text), ...(action === undefined ? [] : [action]), say(commands.ready[0] ?? '')];
}

const finality = ({ kind }: Act, { warning }: BenchText['guide']): string =>
  kind === 'add' ? warning.goesInForGood : warning.filledForGood;
