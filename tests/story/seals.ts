import { daysBetween, HOUR } from '../../src/domain/calendar';
import { judge } from '../../src/procedure/judge';
import { finishOf } from '../../src/procedure/limits';
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
