import * as v from 'valibot';
import type { SheetFault, SheetRule } from '../domain/problem';
import { accepted, refused, type Result } from '../domain/result';
import { kitSheetShape, SHEET_FORMAT, SHEET_VERSION, type KitSheet } from './kit-sheet';
import { sheetFaults } from './sheet-faults';

/** A kit sheet from anywhere: a file, a batch, our own folder. Refused with each fault's path and value, or whole. */
export function parseKitSheet(given: unknown): Result<KitSheet> {
  const header = v.safeParse(v.object({ format: v.literal(SHEET_FORMAT), version: v.number() }), given);
  if (!header.success) return refused({ code: 'not-a-kit-sheet' });
  if (header.output.version > SHEET_VERSION)
    return refused({ code: 'newer-format', version: header.output.version });
  const parsed = v.safeParse(kitSheetShape, given);
  const faults = parsed.success ? sheetFaults(parsed.output) : parsed.issues.map(asFault);
  return parsed.success && faults.length === 0
    ? accepted(parsed.output)
    : refused({ code: 'sheet-refused', faults });
}

/** The sheet in a text, as it came from a file. */
export function readKitSheet(text: string): Result<KitSheet> {
  try {
    return parseKitSheet(JSON.parse(text));
  } catch {
    return refused({ code: 'not-json' });
  }
}

function asFault(issue: v.BaseIssue<unknown>): SheetFault {
  const requirement = 'requirement' in issue ? issue.requirement : undefined;
  const named =
    typeof requirement === 'number' || typeof requirement === 'function' || requirement instanceof RegExp;
  const allowed = named ? String(requirement) : issue.expected;
  return {
    path: v.getDotPath(issue) ?? '',
    given: shown(issue.input),
    rule: ruleOf(issue),
    ...(allowed === null ? {} : { allowed }),
  };
}

const RULE_BY_TYPE: Partial<Record<string, SheetRule>> = {
  min_value: 'outside',
  max_value: 'outside',
  min_length: 'outside',
  max_length: 'outside',
  picklist: 'not-one-of',
  literal: 'not-one-of',
  variant: 'not-one-of',
};

function ruleOf(issue: v.BaseIssue<unknown>): SheetRule {
  if (issue.expected === 'never') return 'unknown-key';
  if (issue.input === undefined) return 'missing';
  return RULE_BY_TYPE[issue.type] ?? 'wrong-kind';
}

/** A given value in short. */
const shown = (value: unknown): string =>
  value === undefined ? 'nothing' : JSON.stringify(value).slice(0, 60);
