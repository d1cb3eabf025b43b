import { and, assign, setup, stateIn } from 'xstate';
import { judge } from '../procedure/judge';
import { nothingYet, type Facts } from '../procedure/facts';
import type { KitSheet } from '../procedure/kit-sheet';
import type { End, Gate, Phase } from '../procedure/phase';
import { joinsAt } from '../procedure/joining';
import { leadsTo } from '../procedure/leads';
import { currentAct } from '../procedure/plan';
import type { Moment } from '../domain/calendar';
import { EVENT_TYPES, type BatchEvent } from './batch-event';
import { record } from './record';
import { refusal } from './refusal';
import { REMEDIES } from './remedies';
import { JOIN_WAYS, MISHAP_WAYS, type Way } from './ways';

export type BatchInput = { sheet: KitSheet; begun: Moment; freeHour: number };
export type BatchContext = { sheet: KitSheet; facts: Facts; act: string | undefined };

const batch = setup({
  types: {
    input: {} as BatchInput,
    context: {} as BatchContext,
    events: {} as BatchEvent,
    tags: {} as 'gate',
  },
  guards: {
    // A guard is a verdict's yes or no. The card and the voice give the same verdict's reason.
    accepted: ({ context, event }, { place }: { place: Phase | Gate }) =>
      refusal({ ...context, place }, event) === undefined,
    'sent back for': ({ context, event }, { place, clause }: { place: Gate; clause: string }) =>
      event.type === 'sent back' &&
      event.clause === clause &&
      refusal({ ...context, place }, event) === undefined,
    'ends so': ({ context, event }, { place, end }: { place: Phase | Gate; end: End }) =>
      event.type === 'ended' && event.end === end && refusal({ ...context, place }, event) === undefined,
    'mishap leads': ({ context, event }, { place, to }: Way) =>
      event.type === 'mishap told' &&
      leadsTo(context.sheet, context.facts, place, event) === to &&
      refusal({ ...context, place }, event) === undefined,
    'joins at': ({ context, event }, { place, to }: Way) =>
      event.type === 'joined' &&
      joinsAt(event.reached) === to &&
      refusal({ ...context, place }, event) === undefined,
    'act moved on': ({ context }, { phase }: { phase: Phase }) =>
      currentAct(phase, context.sheet, context.facts)?.id !== context.act,
    'phase over': ({ context }, { phase }: { phase: Phase }) =>
      currentAct(phase, context.sheet, context.facts) === undefined,
    'act sealed': ({ context: { sheet, facts } }, { phase }: { phase: Phase }) => {
      const act = currentAct(phase, sheet, facts);
      return act?.sealed === true && act.check !== undefined && !judge(act.check, sheet, facts).open;
    },
  },
  actions: {
    'record it': assign(({ context, event }, { place }: { place: Phase | Gate }) => ({
      facts: record(context.sheet, context.facts, place, event),
    })),
    'take up the act': assign(({ context }, { phase }: { phase: Phase }) => ({
      act: currentAct(phase, context.sheet, context.facts)?.id,
    })),
    'put down the act': assign({ act: undefined }),
  },
});

type Target = Phase | Gate | 'finished';

const byWay = (type: 'mishap leads' | 'joins at', { place, to }: Way) => ({
  guard: and([stateIn(place), { type, params: { place, to } }]),
  actions: { type: 'record it', params: { place } } as const,
  ...(to === undefined ? {} : { target: `.${to}` as const }),
});

/** What may be reported at any place; whether it is taken there is the one guard's to say. */
const REPORTS = EVENT_TYPES.filter(
  (type) => !['gate passed', 'sent back', 'ended', 'mishap told', 'joined'].includes(type),
);

const taken = (place: Phase | Gate) => ({
  guard: { type: 'accepted', params: { place } } as const,
  actions: { type: 'record it', params: { place } } as const,
});

const anywhere = (place: Phase | Gate) => ({
  ...Object.fromEntries(REPORTS.map((type) => [type, taken(place)])),
  ended: (['kept unbottled', 'discarded', 'left the guide'] as const).map((end) => ({
    guard: { type: 'ends so', params: { place, end } } as const,
    actions: { type: 'record it', params: { place } } as const,
    target: end,
  })),
});

/** A phase: its acts one after another, then on; where the act is sealed and its verdict shuts, back to the gate behind. */
const walk = (phase: Phase, next: Target, gateBehind?: Gate) =>
  batch.createStateConfig({
    entry: { type: 'take up the act', params: { phase } },
    exit: 'put down the act',
    always: [
      ...(gateBehind
        ? [{ guard: { type: 'act sealed', params: { phase } } as const, target: gateBehind }]
        : []),
      { guard: { type: 'phase over', params: { phase } }, target: next },
      {
        guard: { type: 'act moved on', params: { phase } },
        actions: { type: 'take up the act', params: { phase } },
      },
    ],
    on: anywhere(phase),
  });

/** A gate: one way forward, and the ways back of the remedies table. No event skips it. */
const gate = (place: Gate, next: Target) =>
  batch.createStateConfig({
    tags: 'gate',
    on: {
      ...anywhere(place),
      'gate passed': { ...taken(place), target: next },
      'sent back': REMEDIES.filter((remedy) => remedy.gate === place).map(({ clause, to }) => ({
        guard: { type: 'sent back for', params: { place, clause } } as const,
        actions: { type: 'record it', params: { place } } as const,
        target: to,
      })),
    },
  });

/** The procedure, one for all kit sheets: what may follow what. The acts inside a phase come from the sheet. */
export const batchMachine = batch.createMachine({
  id: 'batch',
  context: ({ input: { sheet, begun, freeHour } }) => ({
    sheet,
    facts: nothingYet(begun, freeHour),
    act: undefined,
  }),
  initial: 'prepare',
  on: {
    'mishap told': MISHAP_WAYS.map((way) => byWay('mishap leads', way)),
    joined: JOIN_WAYS.map((way) => byWay('joins at', way)),
  },
  states: {
    prepare: walk('prepare', 'clean'),
    clean: walk('clean', 'sanitise'),
    sanitise: walk('sanitise', 'mix'),
    mix: walk('mix', 'proving mixed'),
    'proving mixed': gate('proving mixed', 'pitch'),
    pitch: walk('pitch', 'ferment'),
    ferment: walk('ferment', 'proving dry'),
    'proving dry': gate('proving dry', 'rack'),
    rack: walk('rack', 'stabilise'),
    stabilise: walk('stabilise', 'degas', 'proving dry'),
    degas: walk('degas', 'proving gas-free'),
    'proving gas-free': gate('proving gas-free', 'fine'),
    fine: walk('fine', 'top up', 'proving dry'),
    'top up': walk('top up', 'clear'),
    clear: walk('clear', 'proving clear'),
    'proving clear': gate('proving clear', 'proving still'),
    'proving still': gate('proving still', 'bottle'),
    bottle: walk('bottle', 'stand', 'proving still'),
    stand: walk('stand', 'label'),
    label: walk('label', 'wash up'),
    'wash up': walk('wash up', 'rest'),
    rest: walk('rest', 'finished'),
    finished: { type: 'final' },
    'kept unbottled': { type: 'final' },
    discarded: { type: 'final' },
    'left the guide': { type: 'final' },
  },
});
