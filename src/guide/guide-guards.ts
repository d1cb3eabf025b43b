import { secondsLate } from '../timers/clocks';
import { timeLeft } from '../workflow/clock';
import { due } from './guide-actions';
import type { GuideContext } from './guide-context';
import { COUNTDOWN, goesOnByItself } from './goes-on-by-itself';

/** Nobody answered: it is said once more, and then the guide waits. */
const SILENCE = 8000;
const SLEPT = 5000;

const silent = ({ told, saying, since, at, reported }: GuideContext): boolean =>
  told && saying === undefined && !reported && at - since >= SILENCE;

/** An open gate and a question ask for an answer; a shut gate is only told. */
const asksSomething = ({ stage, situation }: GuideContext): boolean =>
  stage !== 'at a gate' || situation?.asks !== undefined || situation?.gate?.verdict.open === true;

export const isUnanswered = (context: GuideContext): boolean =>
  silent(context) && !context.repeated && asksSomething(context);

/** Time that is up is called again and again, but not over the countdown of a clock that goes on by itself. */
export const isStillUnanswered = (context: GuideContext): boolean => silent(context) && !countsDown(context);

export const timeIsUp = ({ situation, at }: GuideContext): boolean =>
  situation?.clock?.running === true && timeLeft(situation.clock, at) <= 0;

/** The time ran out while the maker had asked for quiet: it is called all the same, once. */
export const ranOutMeanwhile = (context: GuideContext): boolean => {
  const { situation, heldAt } = context;
  return timeIsUp(context) && situation?.clock?.running === true && situation.clock.endsAt > heldAt;
};

export const hasCalls = (context: GuideContext): boolean => due(context).length > 0;

/** Ticks stayed away: the device slept, and how much is left is no longer plain. */
export const hasSlept = ({ at, calledUntil }: GuideContext): boolean => at - calledUntil > SLEPT;

export const countdownIsOver = (context: GuideContext): boolean =>
  context.told && !context.reported && countsDown(context) && context.at - context.since >= COUNTDOWN;

const countsDown = ({ situation, since }: GuideContext): boolean => {
  const { now, clock } = situation ?? {};
  return (
    now !== undefined && clock?.running === true && goesOnByItself(now.act, secondsLate(clock.endsAt, since))
  );
};
