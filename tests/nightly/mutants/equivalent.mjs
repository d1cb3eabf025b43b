/**
 * Mutants that no spec can catch, because they change nothing that can be seen, each with why.
 * @type {Readonly<Record<string, string>>}
 */
export const EQUIVALENT = {
  'src/domain/gates/counted-readings.ts: oldEnough < 0 → oldEnough <= 0':
    'equivalent: from the first reading on is all of them',
  'src/domain/gates/counted-readings.ts: oldEnough < 0 ? eligible : eligible.slice(Math.max(0, Math.min(oldE… → eligible.slice(Math.max(0, Math.min(oldEnough, enough)))':
    'equivalent: a place below 0 is cut to 0, which is all of them',
  'src/domain/gates/ferment-pace.ts: newest && newest.takenAt - reading.takenAt >= STUCK_WITHIN_HOURS * … → newest.takenAt - reading.takenAt >= STUCK_WITHIN_HOURS * HOUR':
    'equivalent: asked only where there is a reading; for the compiler',
  'src/domain/gates/ferment-pace.ts: !newest || !before → !before':
    'equivalent: asked only where there is a reading; for the compiler',
  'src/domain/gates/ferment-pace.ts: !previous || !newest → !previous':
    'equivalent: where there is one before there is a newest; for the compiler',
  'src/domain/gates/fermentation-finished.ts: !newest || mayCount(newest, finish) → !newest':
    'equivalent: a reading that counts is neither cold nor gassy, so that no clause follows',
  'src/domain/gates/fermentation-finished.ts: pitched !== undefined && daysBetween(pitched, now) < finish.minimum… → daysBetween(pitched, now) < finish.minimumDays':
    'equivalent: no yeast is the clause before it; for the compiler',
  'src/domain/gates/fermentation-finished.ts: previous !== undefined && last !== undefined → previous !== undefined':
    'equivalent: enough readings are at least two; for the compiler',
  'src/domain/gates/fermentation-finished.ts: previous !== undefined && last !== undefined → last !== undefined':
    'equivalent: enough readings are at least two; for the compiler',
  'src/domain/gates/fermentation-finished.ts: previous !== undefined && last !== undefined && enough(before, finish) → enough(before, finish)':
    'equivalent: enough readings are at least two; for the compiler',
  'src/domain/gates/fermentation-finished.ts: counted[0]?.gravity ?? 0 → counted[0]?.gravity':
    'equivalent: without readings no fall is compared; for the compiler',
  'src/domain/gates/fermentation-finished.ts: counted.at(-1)?.gravity ?? 0 → counted.at(-1)?.gravity':
    'equivalent: without readings no fall is compared; for the compiler',
  'src/domain/gates/fermentation-finished.ts: readings.length === 0 ? 0 : Math.max(...readings.map(({ gravity }) … → Math.max(...readings.map(({ gravity }) => gravity)) - Math.min(...r…':
    'equivalent: the spread of nothing would be minus infinity, which is as little beyond the scale as 0',
  'src/domain/gates/fermentation-finished.ts: covered ? now.at : hoursAfter(run[0]?.takenAt ?? now.at, finish.hou… → hoursAfter(run[0]?.takenAt ?? now.at, finish.hoursApart)':
    'equivalent: what is covered is past, and the latest of the times is given',
  'src/domain/gates/fermentation-finished.ts: run.at(-1)?.takenAt ?? now.at → run.at(-1)?.takenAt':
    'equivalent: one more is wanted only after a reading; for the compiler',
  'src/domain/gates/may-stabilise.ts: reading.takenAt > passing.at → reading.takenAt >= passing.at':
    'equivalent: a reading of that very moment is as old as the pass',
  'src/domain/gates/may-stabilise.ts: !reading.backDated && reading.takenAt > passing.at → reading.takenAt > passing.at':
    'equivalent: where the newest that counts was told late, the gate itself is shut, and is asked first',
  'src/domain/gates/must-mixed.ts: gravity < lowest → gravity <= lowest':
    'equivalent: at the lower end both give that end',
  'src/domain/gates/box-complete.ts: brim !== undefined && isTooSmall(brim, batch) → isTooSmall(brim, batch)':
    'equivalent: an unknown brim is not a number, and no such thing is too small; for the compiler',
  'src/domain/gates/wine-still.ts: doubtedSince !== undefined && baseline.takenAt <= doubtedSince → baseline.takenAt <= doubtedSince':
    'equivalent: nothing is compared with nothing; for the compiler',
  'src/domain/gates/wine-still.ts: gas.open ? [] : [gas.because] → [gas.because]':
    'equivalent: an open verdict has no reason, and no reason is no clause',
  'src/procedure/judge.ts: !passing || !struck → !passing':
    'equivalent: a pass has its readings; for the compiler',
  'src/procedure/judge.ts: !passing || !struck → !struck':
    'equivalent: without a pass nothing of it is struck; for the compiler',
  'src/procedure/judge.ts: !passing || !struck || struck.length === 0 → !passing || !struck':
    'equivalent: the latest of no strikes is before every baseline and every pass, so that no doubt comes of it',
  'src/procedure/judge.ts: passing?.at ?? 0 → passing?.at':
    'equivalent: a pass that was never made is the clause before it; for the compiler',
  "src/procedure/judge.ts: isStabiliser(contents) && contents.includes('sorbate') → contents.includes('sorbate')":
    'equivalent: sorbate is a stabiliser',
  'src/procedure/judge.ts: limit !== undefined && newest → newest':
    'equivalent: nothing is above no limit; for the compiler',
  'src/procedure/judge.ts: takenAt >= baseline.takenAt → takenAt > baseline.takenAt':
    'equivalent: the gate itself looks only beyond the baseline',
  "src/workflow/act-refusals.ts: event.type === 'judged' && event.what === act.what → event.what === act.what":
    'equivalent: no other event has a "what"; for the compiler',
  'src/workflow/act-refusals.ts: verdict && !verdict.open → verdict':
    'equivalent: no act has both a check and a clock',
  "src/workflow/act-refusals.ts: act.kind === 'wait' && event.at < act.until → event.at < act.until":
    'equivalent: no other act has an "until"; for the compiler',
  "src/workflow/refusal.ts: 'act' in event ? event.act : undefined → event.act":
    'equivalent: where there is none it is undefined; for the compiler',
  'src/workflow/gate-refusals.ts: rules < RULES || verdict.open → rules < RULES':
    'equivalent: an open verdict has no reason',
  'src/workflow/reading-refusals.ts: pitched?.at ?? Infinity → pitched?.at':
    'equivalent: no moment is later than one that never was; for the compiler',
  "src/workflow/batch-machine.ts: event.type === 'sent back' && event.clause === clause → event.clause === clause":
    'equivalent: asked only of that event; for the compiler',
  "src/workflow/batch-machine.ts: event.type === 'ended' && event.end === end → event.end === end":
    'equivalent: asked only of that event; for the compiler',
  "src/workflow/batch-machine.ts: event.type === 'mishap told' && leadsTo(context.sheet, context.fact… → leadsTo(context.sheet, context.facts, place, event) === to":
    'equivalent: asked only of that event; for the compiler',
  "src/workflow/batch-machine.ts: event.type === 'joined' && joinsAt(event.reached) === to → joinsAt(event.reached) === to":
    'equivalent: asked only of that event; for the compiler',
  'src/workflow/batch-machine.ts: act?.sealed === true && act.check !== undefined → act?.sealed === true':
    'equivalent: every sealed act has its check; for the compiler',
  "src/workflow/batch-machine.ts: gateBehind ? [{ guard: { type: 'act sealed', params: { phase } } as… → [{ guard: { type: 'act sealed', params: { phase } } as const, targe…":
    'equivalent: sealed acts are only where a gate lies behind',
};
