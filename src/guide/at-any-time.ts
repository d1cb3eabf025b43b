import { heard, said, takeUp } from './guide-actions';
import { askAbout, mayBeAskedAbout, tellHardToHear } from './doubtful';
import { beginDictation } from './dictate';
import { answerAside, answers, asks, isMeant, isNotMeant, unheard } from './guide-answers';
import type { GuideContext } from './guide-context';
import {
  askOnceMore,
  draftIt,
  goneWrong,
  isAskedOnceMore,
  lookBack,
  mustBeReadBack,
  refuse,
  reportIn,
  reportIt,
  show,
} from './guide-effects';
import type { GuideEvent } from './guide-events';
import { does, guide, offeredAnd, onOffer, when } from './guide-setup';
import { isSame } from './is-same';
import { isTelling } from './is-telling';
import { mayBeDrafted } from './may-be-drafted';
import { isMishapTold, takeUpMishap } from './mishap-told';

type Of<Type extends GuideEvent['type']> = Extract<GuideEvent, { type: Type }>;

/** What the guide takes in whatever it is about; a stage may know better. */
export const atAnyTime = guide.createStateConfig({
  on: {
    situation: [
      {
        guard: when((context, { situation }: Of<'situation'>) => isSame(context, situation)),
        actions: does((context, { situation }: Of<'situation'>) => ({
          context: { ...context, situation },
          out: [],
        })),
      },
      // The same is told again a second later.
      { guard: when((context, { situation }: Of<'situation'>) => isTelling(context, situation)) },
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
    yes: [isMeant, ...answers],
    no: [isNotMeant, ...answers],
    'go on': answers,
    ready: unheard,
    again: asks,
    why: asks,
    'where are we': asks,
    'what can I say': asks,
    'how long': asks,
    'new reading': [
      {
        guard: offeredAnd((_, { how }) => how === 'voice'),
        target: '.finding the place',
        actions: [does(heard), does(beginDictation)],
      },
      { guard: when(onOffer), actions: [...answerAside, does((context) => show(context, 'reading'))] },
      unheard,
    ],
    'write down': [
      { guard: when(onOffer), target: '.finding the place', actions: [does(heard), does(beginDictation)] },
      unheard,
    ],
    wrong: unheard,
    number: unheard,
    unsure: [{ guard: when(mayBeAskedAbout), actions: does(askAbout) }, unheard],
    ears: {
      actions: does((context, { listening }: Of<'ears'>) => ({
        context: { ...context, listening },
        out: [],
      })),
    },
    'hard to hear': {
      guard: when(({ listening, saying }: GuideContext) => listening && saying === undefined),
      actions: does(tellHardToHear),
    },
    'stop listening': [
      {
        guard: when(onOffer),
        actions: [...answerAside, does((context) => ({ context, out: [{ type: 'deafen' }] }))],
      },
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
});
