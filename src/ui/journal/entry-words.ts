import type { Facts } from '../../procedure/facts';
import type { KitSheet } from '../../procedure/kit-sheet';
import type { EntryWords } from '../../text/entry-words';
import type { Formats } from '../../text/formats';
import { printedOn } from '../../procedure/judge';
import type { Text } from '../../text/text';
import { REMEDIES } from '../../workflow/remedies';
import { actName } from '../act-name';

/** What the lines of one batch's journal are told with. */
export const entryWords = (sheet: KitSheet, facts: Facts, text: Text, formats: Formats): EntryWords => ({
  formats,
  act: (id) => actName(id, sheet, text),
  sachet: (id) => printedOn(sheet, id),
  gate: (gate) => text.gates[gate].question,
  place: (place) => text.places[place],
  answer: ({ what, yes }) => {
    const { question, ...answers } = text.judgements[what];
    return text.screens.journal.entries.answered(question, yes ? answers.yes : answers.no);
  },
  reading: (entry) => facts.readings.find((reading) => reading.entry === entry),
  back: ({ gate, clause }) => {
    const to = REMEDIES.find((remedy) => remedy.gate === gate && remedy.clause === clause)?.to;
    return text.screens.journal.entries.sentBack(text.gates[gate].question, to ? text.places[to] : clause);
  },
});
