import { builtInSheets } from '../../src/procedure/kits';
import { isGate } from '../../src/procedure/phase';
import { dictationAt, type Dictation } from '../../src/guide/dictation';
import { firstContext, type GuideContext } from '../../src/guide/guide-context';
import type { Stage } from '../../src/guide/guide-events';
import { offered } from '../../src/guide/offered';
import { situationOf } from '../../src/guide/situation-of';
import { stageOf } from '../../src/guide/stage-of';
import type { Command } from '../../src/voice/commands';
import { Maker } from '../story/maker';
import { words } from '../story/play';

/** Commands that are on offer together at some moment of a batch, the main one first. */
export type Offer = readonly Command[];

/** What the maker's own word or the clock can lead to from anywhere, besides what the batch asks. */
const ELSEWHERE: readonly Stage[] = ['reading back', 'held', 'looking back'];
const AT_A_CLOCK: readonly Stage[] = ['timing', 'time up', 'held'];

function stagesAt(context: GuideContext): Stage[] {
  const kind = context.situation?.now?.act.kind;
  const timed = kind === 'stir' || kind === 'timer' ? AT_A_CLOCK : [];
  return [stageOf(context), 'acting', ...ELSEWHERE, ...timed];
}

function offersAt({ snapshot, now }: Maker): Offer[] {
  const situation = situationOf(snapshot, now, words);
  const context = { ...firstContext(words, now.at), situation, told: true, listening: true };
  return [
    ...stagesAt(context).map((stage) => offered({ ...context, stage })),
    // What was not surely heard is asked about, and answered with yes or no.
    offered({ ...context, stage: stageOf(context), unsure: 'again' }),
    ...dictations(dictationAt(situation)).map((dictation) =>
      offered({ ...context, stage: 'dictating', dictation }),
    ),
  ];
}

/** A card that is told by voice, before each of its answers. */
const dictations = ({ fields }: Dictation): Dictation[] =>
  fields.map((_, nth) => ({
    fields,
    answers: Object.fromEntries(fields.slice(0, nth).map((field) => [field, 0])),
  }));

/** Every set of commands that is on offer at any moment of any kit's batch. */
export function everyOffer(): Offer[] {
  const offers = new Map<string, Offer>();
  for (const sheet of builtInSheets) {
    const maker = new Maker(sheet);
    while (maker.place !== 'finished') {
      for (const offer of offersAt(maker)) if (offer.length > 0) offers.set(offer.join(), offer);
      if (isGate(maker.place)) maker.prove(maker.place);
      else maker.answer();
    }
  }
  return [...offers.values()];
}
