import { daysBetween } from '../../domain/calendar';
import { standing } from '../../domain/reading';
import type { Facts } from '../../procedure/facts';
import type { KitSheet } from '../../procedure/kit-sheet';
import { clearingAct } from '../../procedure/judge';
import { finishOf } from '../../procedure/limits';
import { startGravity } from '../../procedure/selections';

/**
 * Shares of the batch that lie at the bottom when it has fermented, and when finings have brought the haze down. Common
 * practice loses two to five parts in a hundred at a move. Drawn, and never told as a measure.
 */
const OF_FERMENT = 0.03;
const OF_FININGS = 0.012;
/** What a wine that left its thick lees early still lets fall. A wine that was dry when it was moved lets nothing fall by itself. */
const AFTER_EARLY_MOVE = 0.2;

/** Litres of sediment to draw: it grows as the must ferments, stays behind at a move, is stirred up, and falls again as the wine clears. */
export function sedimentOf(sheet: KitSheet, facts: Facts): number {
  const since = (act: string) => act in facts.done;
  const movedDry = since('siphon off 2') || since('siphon off 3');
  const stays = movedDry ? 0 : since('siphon off 1') ? AFTER_EARLY_MOVE : 1;
  const ferment = OF_FERMENT * stays * fermented(sheet, facts);
  const cleared = settled(sheet, facts);
  const lying = since('stir up sediment 1') ? ferment * cleared : ferment;
  const fined = since('siphon off 3') ? 0 : OF_FININGS * cleared;
  return sheet.batchLitres * (lying + fined);
}

/** How much of the way the gravity has come: by the readings, or by the days where there is none. */
function fermented(sheet: KitSheet, facts: Facts): number {
  if (!facts.pitched) return 0;
  const start = startGravity(sheet, facts);
  const last = standing(facts.readings).at(-1)?.gravity;
  const byDays = daysBetween(facts.pitched, facts.now) / sheet.dry.minimumDays;
  const limit = finishOf(sheet).limit;
  const byGravity = start === undefined || last === undefined ? 0 : (start - last) / (start - limit);
  return Math.min(1, Math.max(0, byDays, byGravity));
}

/** How much of the haze has fallen: all of it once the wine was seen to be clear. */
function settled(sheet: KitSheet, facts: Facts): number {
  const since = facts.done[clearingAct(facts)];
  if (!since) return 0;
  return Math.min(1, (daysBetween(since, facts.now) + 1) / sheet.clearingDays);
}
