import { HOUR } from '../domain/calendar';
import { relativeDensity, type Gravity } from '../domain/gravity';
import type { Problem } from '../domain/problem';
import { PERHAPS_FALLING, standing, type Instrument, type Reading } from '../domain/reading';
import type { Facts } from '../procedure/facts';
import type { Place } from '../procedure/phase';
import type { EventOf } from './batch-event';
import { corrected, instrumentFrom } from './corrected';
import type { Refusals, Standing } from './standing';

export const READING_REFUSALS: Refusals = {
  'instrument checked': waterMisread,
  'reading taken': mayBeRead,
  'reading struck': ({ facts }, { entry }) =>
    standing(facts.readings).some((reading) => reading.entry === entry)
      ? undefined
      : { code: 'nothing-to-correct' },
};

const AFTER_BOTTLING: ReadonlySet<Place> = new Set<Place>(['stand', 'label', 'wash up', 'rest']);
const OFF_AT_MOST = 50;

/** A hydrometer that is off by more than 0.005 in water is broken, or was not in plain water. */
function waterMisread({ facts }: Standing, event: EventOf<'instrument checked'>): Problem | undefined {
  if (event.act === undefined && facts.instrument) return { code: 'not-this-act' };
  const { waterReading, waterCelsius } = event;
  const fault: Problem = { code: 'water-misread', gravity: waterReading, celsius: waterCelsius };
  if (!withinReach(waterReading)) return fault;
  return Math.abs(instrumentFrom(event).offset) > OFF_AT_MOST ? fault : undefined;
}

/** What the correction can work with: 0.970 to 1.180 on the glass. */
const withinReach = (reading: Gravity): boolean =>
  relativeDensity(reading) >= 0.97 && relativeDensity(reading) <= 1.18;

/** The hydrometer must have been checked, and only must or wine is measured: before mixing there is none. */
function mayBeRead(then: Standing, event: EventOf<'reading taken'>): Problem | undefined {
  const { facts, place } = then;
  const { instrument } = facts;
  if (!instrument) return { code: 'hydrometer-not-checked' };
  const mustThere = event.act !== undefined || facts.done['fill to mark 1'] !== undefined;
  if (!mustThere || AFTER_BOTTLING.has(place)) return { code: 'not-this-act' };
  const read = (event.reading - instrument.offset) as Gravity;
  if (!withinReach(read)) return { code: 'sample-out-of-reach', gravity: read, celsius: event.sampleCelsius };
  return event.confirmed === true ? undefined : questioned(facts, instrument, event);
}

const JUMP_A_DAY = 100;

/** A jump of more than 0.010 a day, or a rise, is asked about before it counts: misread, gas, or a wrong temperature. */
function questioned(
  facts: Facts,
  instrument: Instrument,
  event: EventOf<'reading taken'>,
): Problem | undefined {
  const takenAt = event.takenAt ?? event.at;
  const before = comparable(facts, takenAt);
  if (!before) return undefined;
  const fall = before.gravity - corrected(event, instrument, facts);
  const hours = (takenAt - before.takenAt) / HOUR;
  if (fall + PERHAPS_FALLING <= 0) return { code: 'reading-went-up', by: (0 - fall) as Gravity };
  return fall > JUMP_A_DAY * Math.max(1, hours / 24)
    ? { code: 'reading-jumped', by: fall as Gravity, hours }
    : undefined;
}

/** The reading before it, of the same wine: after the yeast, and nothing sweet added between. */
function comparable({ readings, pitched, additions }: Facts, takenAt: number): Reading | undefined {
  const sweetened = additions.findLast(({ contents }) => contents.includes('sweetening pack'))?.at ?? 0;
  const from = Math.max(pitched?.at ?? Infinity, sweetened);
  return standing(readings).findLast((reading) => reading.takenAt >= from && reading.takenAt <= takenAt);
}
