import { isNumberAsked, isYesNoAsked, takeBackLast, takeNumber, takeYesNo } from './dictate';
import { heard } from './guide-actions';
import { isMeant, isNotMeant, repeats, unheard } from './guide-answers';
import { does, offeredAnd, onOffer, when } from './guide-setup';

const next = 'finding the place';
const yesOrNo = {
  guard: offeredAnd(isYesNoAsked),
  target: next,
  actions: [does(heard), does(takeYesNo)],
} as const;

/** While a card is filled in by voice: a number or a yes or no, as it is asked, and a word to take the last one back. */
export const whileDictating = {
  ...repeats,
  number: [{ guard: when(isNumberAsked), target: next, actions: [does(heard), does(takeNumber)] }, unheard],
  yes: [isMeant, yesOrNo, unheard],
  no: [isNotMeant, yesOrNo, unheard],
  wrong: [{ guard: when(onOffer), target: next, actions: [does(heard), does(takeBackLast)] }, unheard],
} as const;
