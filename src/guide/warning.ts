import { isIrreversible, type Act } from '../procedure/step';
import type { GuideText } from './guide-text';
import type { ActInWords, Situation } from './situation';

/** What a warning is remembered by: a sachet's each time, any other hazard once in a stage and a visit. */
export function warningOf({ place, now }: Situation): string | undefined {
  if (!now) return undefined;
  if (isIrreversible(now.act)) return now.act.id;
  return now.words.caution === undefined ? undefined : `${place}: ${now.words.caution}`;
}

/** The hazard, then what to do: for a sachet, to take it up and read its name. */
export function warningLines({ act, words }: ActInWords, { guide }: GuideText): string[] {
  const hazard = words.caution === undefined ? [] : [words.caution];
  const forGood = isIrreversible(act) ? [finality(act, guide)] : [];
  const action = act.kind === 'add' ? [guide.warning.takeUp(act.sachet)] : [];
  return [...hazard, ...forGood, ...action, guide.say(guide.commands.ready[0] ?? '')];
}

const finality = ({ kind }: Act, { warning }: GuideText['guide']): string =>
  kind === 'add' ? warning.goesInForGood : warning.filledForGood;
