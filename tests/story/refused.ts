import { builtInSheets } from '../../src/procedure/kits';
import type { KitSheet } from '../../src/procedure/kit-sheet';
import type { Place } from '../../src/procedure/phase';
import type { Problem } from '../../src/domain/problem';
import type { Instant } from '../../src/domain/unit';
import type { BatchEvent, Report } from '../../src/workflow/batch-event';
import { refusal } from '../../src/workflow/refusal';
import { Maker } from './maker';

export const sheetOf = (id: string): KitSheet => {
  const found = builtInSheets.find((sheet) => sheet.id === id);
  if (!found) throw new Error(`no kit sheet ${id}`);
  return found;
};

export const hedge = sheetOf('hedge-lantern');

export const how = 'touch' as const;
export const REASON = 'my own decision';

const walked = new Map<string, Maker>();

/** A copy of a normal batch at a place: the way there is walked once. */
export function at(place: Place, sheet = hedge): Maker {
  const key = `${sheet.id} ${place}`;
  const there = walked.get(key) ?? new Maker(sheet).goTo(place);
  walked.set(key, there);
  return there.fork();
}

/** Why a batch would not take a report now; nothing when it would. */
export function refused(maker: Maker, report: Report, rest: Partial<BatchEvent> = {}): Problem | undefined {
  const { sheet, place, facts, now } = maker;
  return refusal({ sheet, place, facts }, { ...report, ...now, ...rest } as BatchEvent);
}

/** The code of the refusal, or "taken". */
export const said = (maker: Maker, report: Report, rest: Partial<BatchEvent> = {}): string =>
  refused(maker, report, rest)?.code ?? 'taken';

export const later = (maker: Maker, milliseconds: number): Instant =>
  (maker.now.at + milliseconds) as Instant;
