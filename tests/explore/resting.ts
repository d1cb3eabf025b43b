import { HOUR, hoursAfter, nextFreeHour } from '../../src/domain/calendar';
import { answersSince } from '../../src/domain/judgement';
import { standing } from '../../src/domain/reading';
import type { Facts } from '../../src/procedure/facts';
import { lastPouredBack } from '../../src/procedure/selections';
import { daysToEvening } from './hour';
import { evening } from './readings';

const WEEK_HOURS = 7 * 24;

/** The baseline and what was read since, as the last gate sees it: its week ends for readings with an evening. */
export function resting(facts: Facts, left: number): unknown {
  const baseline = facts.readings.find(({ entry }) => entry === facts.baseline);
  if (!baseline) return undefined;
  const ready = Math.max(hoursAfter(baseline.takenAt, WEEK_HOURS), lastPouredBack(facts));
  const since = standing(facts.readings).filter(({ takenAt }) => takenAt > baseline.takenAt);
  const rested = since.filter(({ takenAt, backDated }) => takenAt >= ready && !backDated).length;
  return [
    Math.max(0, Math.ceil((ready - evening(facts, 1)) / HOUR / 24)),
    facts.now.at >= ready,
    nextFreeHour(facts.now, facts.freeHour) === facts.now.at,
    baseline.struck,
    Math.min(rested, left + 1),
    since
      .slice(-1 - left)
      .map((reading) => [
        reading.gravity - baseline.gravity,
        reading.takenAt >= ready && !reading.backDated,
        daysToEvening(reading.takenAt, facts, LATEST_TOLD),
      ]),
    answersSince(facts.judgements, 'gas', ready)
      .slice(-2)
      .map(({ yes }) => yes),
  ];
}

/** Days. A reading that is told a day late may come before one that is not as old. */
const LATEST_TOLD = 2;
