import type { KitSheet } from '../procedure/kit-sheet';
import { STEPS, type StepId } from '../procedure/step';
import type { Text } from '../text/text';

/** What an act is called in a list or in the record, from its id: its step, and the sachet where it is about one. */
export function actName(id: string, sheet: KitSheet, text: Text): string {
  const step = stepOf(id);
  if (!step) return id;
  const sachet = sheet.sachets.find((each) => id === `${step} ${each.id}`);
  return text.screens.actName(text.stepNames[step], sachet?.printed);
}

/** An id is the step and what tells it from its like: "stir in sorbate", "read towards dry 2". */
const stepOf = (id: string): StepId | undefined =>
  STEPS.filter((step) => id.startsWith(`${step} `)).toSorted((a, b) => b.length - a.length)[0];
