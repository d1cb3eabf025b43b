import type { EarNews } from '../voice/ear/ears';
import { hearingOf, type Said } from '../voice/hearing-of';
import type { Earshot, Meaning } from './earshot';
import type { GuideCommand, GuideEvent } from './guide-events';

type Undated<Event> = Event extends GuideEvent ? Omit<Event, 'at'> : never;

type Heard = Pick<Extract<EarNews, { type: 'heard' }>, 'hearing' | 'snr'>;

/** What was heard, as the guide takes it. */
export type Taken =
  Omit<GuideCommand, 'at'> | Undated<Extract<GuideEvent, { type: 'number' | 'unsure' | 'mishap heard' }>>;

/**
 * What a hearing is taken for: nothing where it is neither a phrase on offer nor the number that is asked. What is not
 * sure is asked about; a number and what went wrong are read back in any case.
 */
export function takenFor({ hearing, snr }: Heard, { phrases, numbers }: Earshot): Taken | undefined {
  const offer = { phrases: [...phrases.keys()], ...(numbers ? { numbers } : {}) };
  const understood = hearingOf(hearing, offer, snr);
  if (!understood) return undefined;
  const isSure = 'sure' in understood;
  const said: Said = isSure ? understood.sure : understood.unsure;
  if (typeof said === 'number') return { type: 'number', value: said };
  const meaning = phrases.get(said);
  return meaning && meant(meaning, isSure);
}

function meant(meaning: Meaning, isSure: boolean): Taken {
  if ('mishap' in meaning) return { type: 'mishap heard', mishap: meaning.mishap };
  return isSure ? { type: meaning.command, how: 'voice' } : { type: 'unsure', command: meaning.command };
}
