import { atAnyTime } from './at-any-time';
import { askForHand, draftMishap, isTold, needsHand, showMishap } from './doubtful';
import { call, due, enter, heard, heed } from './guide-actions';
import { answerAside, repeats, sayAgain, unheard } from './guide-answers';
import { firstContext, type GuideContext } from './guide-context';
import { dropDraft, goOnByItself, reportIn, reportIt, show } from './guide-effects';
import type { Stage } from './guide-events';
import * as guards from './guide-guards';
import { does, guide, offeredAnd, onOffer, when } from './guide-setup';
import { isMishapDrafted } from './mishap-told';
import { ownLines } from './own-lines';
import { stageOf } from './stage-of';
import { whileDictating } from './while-dictating';

type On = Parameters<typeof guide.createStateConfig>[0]['on'];
const stage = (name: Stage, on: On = {}) =>
  guide.createStateConfig({ entry: does((context) => enter(context, name)), on });

const STAGES = [
  'resting',
  'warning',
  'acting',
  'dictating',
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
  on: atAnyTime.on,
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
    dictating: stage('dictating', whileDictating),
    'reading back': stage('reading back', {
      ...repeats,
      yes: [
        { guard: offeredAnd(needsHand), actions: does(askForHand) },
        { guard: when(onOffer), actions: [does(heard), does(reportIt)] },
        unheard,
      ],
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
      'mishap heard': [
        { guard: when(isTold), target: 'reading back', actions: does(draftMishap) },
        { guard: when(({ telling }: GuideContext) => telling), actions: does(showMishap) },
      ],
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
