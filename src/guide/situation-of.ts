import { HOUR, type Moment } from '../domain/calendar';
import type { Judged } from '../domain/judgement';
import { asOf, type Facts } from '../procedure/facts';
import { gravityAsked } from '../procedure/gravity-asked';
import { judge } from '../procedure/judge';
import type { KitSheet } from '../procedure/kit-sheet';
import { isGate, isPhase, type Gate, type Place } from '../procedure/phase';
import { plan } from '../procedure/plan';
import type { Act } from '../procedure/step';
import { remediesFor } from '../workflow/remedies';
import { wrappersDue } from '../procedure/wrappers';
import { placeOf, type BatchSnapshot } from '../workflow/replay';
import { frameOf } from './frame';
import type { Spoken } from './guide-text';
import { obstacle } from './obstacle';
import { runAhead } from './run-ahead';
import type { ActInWords, Situation } from './situation';

/** After so long away, coming back is a new visit. */
const VISIT_HOURS = 3;

/** What the guide needs to know, from a batch and the time. */
export function situationOf(snapshot: BatchSnapshot, now: Moment, words: Spoken): Situation {
  const { sheet } = snapshot.context;
  const place = placeOf(snapshot);
  const last = snapshot.context.facts;
  const facts = asOf(last, now);
  const acts = isPhase(place) ? plan(place, sheet, facts) : [];
  const at = whichAct(acts, sheet, facts, words);
  // A clock that ran on meanwhile comes first.
  const frame = isVisitBegun(last, now) && !at.clock ? frameOf(runAhead(place, sheet, facts)) : undefined;
  return {
    place,
    ...at,
    ...(isGate(place) ? atGate(place, sheet, facts) : {}),
    ...(frame ? { frame } : {}),
    plausible: gravityAsked(at.now?.act.step, sheet, facts),
    wrappers: wrappersDue(sheet, facts).map(({ printed }) => printed),
    sachets: sheet.sachets,
    resumed: last.entries > 0,
    entries: last.entries,
    lastAt: last.now.at,
  };
}

/** A run of acts begins when someone comes back, and when a gate that took days has just been passed. */
const isVisitBegun = ({ entries, now, passed }: Facts, { at }: Moment): boolean =>
  entries === 0 ||
  at - now.at > VISIT_HOURS * HOUR ||
  passed['proving dry']?.at === now.at ||
  passed['proving still']?.at === now.at;

type WhichAct = Pick<Situation, 'nth' | 'of' | 'now' | 'next' | 'clock' | 'obstacle' | 'asks' | 'done'>;

function whichAct(acts: readonly Act[], sheet: KitSheet, facts: Facts, words: Spoken): WhichAct {
  const index = acts.findIndex(({ done }) => !done);
  const done = acts.filter((act) => act.done).map((act) => nameOf(act, words));
  const counted = { nth: index + 1, of: acts.length, done };
  const act = acts[index];
  if (!act) return counted;
  const due = act.kind === 'wait' ? act.until : act.due;
  const told = inWords(act, words);
  if (due !== undefined && due > facts.now.at) return { ...counted, next: { ...told, due } };
  const clock = facts.clocks[act.id];
  const problem = obstacle(act, sheet, facts);
  return {
    ...counted,
    now: told,
    ...(clock ? { clock } : {}),
    ...(problem ? { obstacle: problem } : {}),
    ...(act.kind === 'judge' ? { asks: act.what } : {}),
  };
}

const inWords = (act: Act, { text, formats }: Spoken): ActInWords => ({
  act,
  words: text.steps[act.step](act, formats),
});

const nameOf = (act: Act, { text }: Spoken): string =>
  text.guide.actName(text.stepNames[act.step], act.kind === 'add' ? act.sachet : undefined);

function atGate(gate: Gate, sheet: KitSheet, facts: Facts): Pick<Situation, 'gate' | 'asks'> {
  const verdict = judge(gate, sheet, facts);
  const failed = verdict.open ? [] : [verdict.because, ...verdict.also];
  const remedies = remediesFor(gate, failed);
  const [remedy] = remedies;
  if (remedy) return { gate: { gate, verdict, ...(remedies.length === 1 ? { remedy } : {}) } };
  const isTimely = verdict.open || (verdict.earliest ?? 0) <= facts.now.at;
  const [first] = failed;
  const asks = isTimely && first ? ASKED_AT_GATES[first.code] : undefined;
  return { gate: { gate, verdict }, ...(asks ? { asks } : {}) };
}

/** Clauses that an answer can clear now. */
const ASKED_AT_GATES: Partial<Record<string, Judged>> = {
  'gas-not-tested': 'gas',
  'not-looked-at': 'clear',
};

/** Where the guide has nothing to lead: an end. */
export const isOver = (place: Place): boolean => !isPhase(place) && !isGate(place);
