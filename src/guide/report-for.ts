import type { GuideContext } from './guide-context';
import type { GuideCommand, GuideReport } from './guide-events';
import type { Situation } from './situation';

/** What a command reports where the guide stands; nothing where it only moves the guide itself. */
export function reportFor(context: GuideContext, command: GuideCommand): GuideReport | undefined {
  const { situation, stage, draft } = context;
  if (!situation) return undefined;
  if (stage === 'reading back') return command.type === 'yes' ? draft : undefined;
  if (stage === 'at a gate') return atGate(situation, command);
  return situation.now && REPORTS[command.type]?.({ ...situation, now: situation.now }, command);
}

type AtAct = Situation & Required<Pick<Situation, 'now'>>;

const REPORTS: Partial<
  Record<GuideCommand['type'], (at: AtAct, command: GuideCommand) => GuideReport | undefined>
> = {
  done: doneOf,
  finish: doneOf,
  yes: (at, { how }) => judged(at, true, how),
  no: (at, { how }) => judged(at, false, how),
  start: ({ now }, { how }) => ({ type: 'clock started', how, act: now.act.id }),
  wait: ({ now, clock }, { how }) =>
    now.act.kind === 'stir' && clock?.running ? { type: 'clock paused', how, act: now.act.id } : undefined,
  'go on': ({ now, clock }, { how }) =>
    clock && !clock.running ? { type: 'clock resumed', how, act: now.act.id } : undefined,
  'one more minute': ({ now }, { how }) => ({ type: 'clock extended', how, act: now.act.id, seconds: 60 }),
};

function doneOf({ now: { act } }: AtAct, { how }: GuideCommand): GuideReport {
  if (act.kind === 'account') return { type: 'sachets accounted', how, act: act.id, missing: [] };
  if (act.kind === 'litres') return { type: 'litres measured', how, act: act.id, litres: act.suggested };
  return { type: 'act done', how, act: act.id };
}

const judged = ({ now, asks }: AtAct, yes: boolean, how: GuideCommand['how']): GuideReport | undefined =>
  asks && { type: 'judged', how, act: now.act.id, what: asks, yes };

function atGate({ gate, asks }: Situation, { type, how }: GuideCommand): GuideReport | undefined {
  if (!gate) return undefined;
  if (type === 'go on') {
    if (gate.verdict.open) return { type: 'gate passed', how, gate: gate.gate };
    return gate.remedy && { type: 'sent back', how, gate: gate.gate, clause: gate.remedy.clause };
  }
  return asks && (type === 'yes' || type === 'no')
    ? { type: 'judged', how, what: asks, yes: type === 'yes' }
    : undefined;
}
