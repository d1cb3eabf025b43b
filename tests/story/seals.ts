import { daysBetween, HOUR } from '../../src/domain/calendar';
import { judge } from '../../src/procedure/judge';
import { finishOf } from '../../src/procedure/limits';
import { sugarToFerment } from '../../src/procedure/selections';
import type { Maker } from './maker';

/** Written apart from the gate, and cruder: what must at least be true of any wine that gets a stabiliser. */
function couldBeDry({ facts, sheet }: Maker): boolean {
  const { limit, wineAtLeast } = finishOf(sheet);
  const isTested = facts.sugarTests.some(({ gramsPerLitre }) => gramsPerLitre <= 2);
  const isOverridden = facts.overrides.some(({ clause }) => clause === 'too-soon');
  const good = facts.readings.filter(
    (reading) =>
      !reading.struck &&
      (isTested || reading.gravity <= limit) &&
      reading.wine >= Math.max(18, wineAtLeast) &&
      reading.degassed,
  );
  const times = good.map(({ takenAt }) => takenAt);
  return (
    good.length >= Math.max(2, sheet.dry.readings) &&
    Math.max(...times) - Math.min(...times) >= Math.max(48, sheet.dry.hoursApart) * HOUR &&
    facts.pitched !== undefined &&
    (isOverridden || daysBetween(facts.pitched, facts.now) >= sheet.dry.minimumDays)
  );
}

/** What is wrong where a batch stands in a sealed act that it should not be in; nothing when all is well. */
export function sealBroken(maker: Maker): string | undefined {
  const { act, place, sheet, facts } = maker;
  if (!act?.sealed || !act.check) return undefined;
  const verdict = judge(act.check, sheet, facts);
  if (!verdict.open) return `${place}, ${act.id}: ${verdict.because.code}`;
  return place === 'stabilise' && !couldBeDry(maker) ? `${place}, ${act.id}: cannot be dry` : undefined;
}

/** Written apart from the gate: behind sugar that nothing guards, a sealed act needs two dry readings from after it. */
function sugarForgotten({ act, facts, sheet }: Maker): string | undefined {
  const sugar = sugarToFerment(facts);
  if (!act?.sealed || !sugar) return undefined;
  const dry = facts.readings.filter(
    ({ takenAt, gravity, struck }) => takenAt >= sugar.at && gravity <= finishOf(sheet).limit && !struck,
  );
  return dry.length >= 2 ? undefined : `${act.id}: sugar since ${String(sugar.at)} is not shown to be gone`;
}

/** A dose goes in once, whatever is told and in whatever order. */
function dosedTwice({ facts }: Maker): string | undefined {
  const doses = facts.additions
    .filter(({ contents }) => !contents.includes('yeast'))
    .map(({ sachet }) => sachet);
  return new Set(doses).size < doses.length ? `twice in: ${doses.join()}` : undefined;
}

/** Where something may have gone wrong: the seals, and what must be true of sugar and of doses besides. */
export const anythingBroken = (maker: Maker): string | undefined =>
  sealBroken(maker) ?? sugarForgotten(maker) ?? dosedTwice(maker);
