import { call, due, enter, heard, heed, notHeard, said, sayAside, sayOwn, takeUp } from './guide-actions';
import { firstContext } from './guide-context';
import {
  askOnceMore,
  draftIt,
  dropDraft,
  goneWrong,
  goOnByItself,
  isAskedOnceMore,
  lookBack,
  mustBeReadBack,
  refuse,
  reportIn,
  reportIt,
  show,
} from './guide-effects';
import type { GuideCommand, GuideEvent, Stage } from './guide-events';
import * as guards from './guide-guards';
import { does, guide, offeredAnd, onOffer, when } from './guide-setup';
import { isSame } from './is-same';
import { isMishapDrafted, isMishapTold, takeUpMishap } from './mishap-told';
import { mayBeDrafted } from './may-be-drafted';
import { ownLines } from './own-lines';
import { stageOf } from './stage-of';

type Of<Type extends GuideEvent['type']> = Extract<GuideEvent, { type: Type }>;

const unheard = { actions: does(notHeard) };

/** A question: it is answered, and nothing moves. */
const answerAside = [does(heard), does((context, { type }: GuideCommand) => sayAside(context, type))];
const asks = [{ guard: when(onOffer), actions: answerAside }, unheard];

/** An answer: read back where it matters, else reported. */
const answers = [
  {
    guard: offeredAnd(mustBeReadBack),
    target: '.reading back',
    actions: [does(heard), does(draftIt)],
  } as const,
  {
    guard: offeredAnd((context, event) => reportIn(context, event) !== undefined),
    actions: [does(heard), does(reportIt)],
  },
  unheard,
];

const sayAgain = does((context) => sayOwn({ ...context, repeated: true }));
const repeats = { tick: { guard: when(guards.isUnanswered), actions: sayAgain } };

type On = Parameters<typeof guide.createStateConfig>[0]['on'];
const stage = (name: Stage, on: On = {}) =>
  guide.createStateConfig({ entry: does((context) => enter(context, name)), on });

const STAGES = [
  'resting',
  'warning',
  'acting',
  'reading back',
  'timing',
  'time up',
  'at a gate',
  'not due',
  'held',
] as const satisfies readonly Stage[];

/** What leads the maker by ear. It is forgotten when the page closes, and can only report to the batch what was answered. */
export const guideMachine = guide.createMachine({
  id: 'guide',
  context: ({ input }) => firstContext(input.words, input.at),
  initial: 'resting',
  on: {
    situation: [
      {
        guard: when((context, { situation }: Of<'situation'>) => isSame(context, situation)),
        actions: does((context, { situation }: Of<'situation'>) => ({
          context: { ...context, situation },
          out: [],
        })),
      },
      {
        guard: when(isMishapTold),
        target: '.held',
        reenter: true,
        actions: does((context, { situation }: Of<'situation'>) => takeUpMishap(context, situation)),
      },
      {
        target: '.finding the place',
        actions: does((context, { situation }: Of<'situation'>) => takeUp(context, situation)),
      },
    ],
    draft: [
      { guard: when((context, { report }: Of<'draft'>) => !mayBeDrafted(context, report)), ...unheard },
      { guard: when(mustBeReadBack), target: '.reading back', actions: does(draftIt) },
      { actions: does(reportIt) },
    ],
    refused: [
      { guard: when(isAskedOnceMore), target: '.reading back', reenter: true, actions: does(askOnceMore) },
      { guard: when(isMishapTold), target: '.held', actions: does(refuse) },
      { target: '.finding the place', actions: does(refuse) },
    ],
    said: {
      guard: when(
        ({ utterance, saying }, event: Of<'said'>) => saying !== undefined && event.utterance === utterance,
      ),
      actions: does(said),
    },
    done: answers,
    start: answers,
    finish: answers,
    'one more minute': answers,
    yes: answers,
    no: answers,
    'go on': answers,
    ready: unheard,
    again: asks,
    why: asks,
    'where are we': asks,
    'what can I say': asks,
    'how long': asks,
    'new reading': [
      { guard: when(onOffer), actions: [...answerAside, does((context) => show(context, 'reading'))] },
      unheard,
    ],
    'something went wrong': [{ guard: when(onOffer), target: '.held', actions: does(goneWrong) }, unheard],
    wait: [
      {
        guard: offeredAnd((context, event) => reportIn(context, event) !== undefined),
        actions: [does(heard), does(reportIt)],
      },
      { guard: when(onOffer), target: '.held', actions: does(heard) },
      unheard,
    ],
    back: [
      { guard: when(onOffer), target: '.looking back', reenter: true, actions: does(lookBack) },
      unheard,
    ],
  },
  states: {
    'finding the place': {
      always: STAGES.map((name) => ({ guard: when((context) => stageOf(context) === name), target: name })),
    },
    resting: stage('resting'),
    warning: stage('warning', {
      ...repeats,
      ready: [
        { guard: when(onOffer), target: 'finding the place', actions: [does(heard), does(heed)] },
        unheard,
      ],
    }),
    acting: stage('acting', repeats),
    'reading back': stage('reading back', {
      ...repeats,
      yes: [{ guard: when(onOffer), actions: [does(heard), does(reportIt)] }, unheard],
      no: [
        { guard: offeredAnd(isMishapDrafted), target: 'held', actions: [does(heard), does(dropDraft)] },
        { guard: when(onOffer), target: 'finding the place', actions: [does(heard), does(dropDraft)] },
        unheard,
      ],
    }),
    timing: stage('timing', {
      tick: [
        { guard: when(guards.timeIsUp), target: 'time up' },
        { guard: when(guards.hasSlept), actions: does((context) => call(context, ownLines(context))) },
        { guard: when(guards.hasCalls), actions: does((context) => call(context, due(context))) },
        { actions: does((context) => ({ context: { ...context, calledUntil: context.at }, out: [] })) },
      ],
    }),
    'time up': stage('time up', {
      tick: [
        { guard: when(guards.countdownIsOver), actions: does(goOnByItself) },
        { guard: when(guards.isStillUnanswered), actions: sayAgain },
      ],
    }),
    'at a gate': stage('at a gate', repeats),
    'not due': stage('not due'),
    held: stage('held', {
      tick: { guard: when(guards.ranOutMeanwhile), target: 'time up' },
      'where are we': [
        { guard: when(onOffer), actions: [...answerAside, does((context) => show(context, 'recap'))] },
        unheard,
      ],
      'go on': [
        {
          guard: offeredAnd((context, event) => reportIn(context, event) !== undefined),
          actions: [does(heard), does(reportIt)],
        },
        { guard: when(onOffer), target: 'finding the place', actions: does(heard) },
        unheard,
      ],
    }),
    'looking back': stage('looking back', {
      'go on': [{ guard: when(onOffer), target: 'finding the place', actions: does(heard) }, unheard],
    }),
  },
});
