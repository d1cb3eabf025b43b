import type { Reading } from '../domain/reading';
import type { Gate, Place } from '../procedure/phase';
import type { EventOf } from '../workflow/batch-event';
import type { Formats } from './formats';

/** What a line of the journal needs beside its event: how numbers are written, and what things are called. */
export type EntryWords = {
  formats: Formats;
  /** What an act is called, from its id. */
  act: (id: string) => string;
  /** The words printed on a sachet, from its id. */
  sachet: (id: string) => string;
  gate: (gate: Gate) => string;
  place: (place: Place) => string;
  /** A question that was judged, with the answer that was given. */
  answer: (event: EventOf<'judged'>) => string;
  /** The reading that an entry recorded, where it recorded one. */
  reading: (entry: number) => Reading | undefined;
  /** Where a gate's remedy leads to. */
  back: (event: EventOf<'sent back'>) => string;
};
