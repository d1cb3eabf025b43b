import { asGravity, relativeDensity, type Gravity } from '../domain/gravity';
import { standing, type Instrument } from '../domain/reading';
import { correctHydrometer } from '../domain/sums/correct-hydrometer';
import type { Facts } from '../procedure/facts';
import { readingsOfMust } from '../procedure/selections';
import type { EventOf } from './batch-event';

const WATER = 10_000;
const LOWEST_START = 10_200;

/** Plain water read through the same correction: what it shows above or below 1.0000 is the instrument's own error. */
export function instrumentFrom(event: EventOf<'instrument checked'>): Instrument {
  const { division, calibratedAt, waterReading, waterCelsius } = event;
  const reading = relativeDensity(waterReading);
  const water = correctHydrometer({ reading, celsius: waterCelsius, calibratedAt });
  return { division, calibratedAt, offset: (asGravity(water) - WATER) as Gravity };
}

/**
 * What the glass showed, brought to 20/20 °C for this instrument and rounded once. The batch's start gravity, once there
 * is yeast, says how much of it is alcohol.
 */
export function corrected(
  event: Pick<EventOf<'reading taken'>, 'reading' | 'sampleCelsius'>,
  { calibratedAt, offset }: Instrument,
  facts?: Facts,
): Gravity {
  const reading = relativeDensity((event.reading - offset) as Gravity);
  const start = facts && startOf(facts);
  return asGravity(
    correctHydrometer({
      reading,
      celsius: event.sampleCelsius,
      calibratedAt,
      ...(start === undefined ? {} : { start: relativeDensity(start) }),
    }),
  );
}

/** The gravity that fermentation began from, where it was read and is one that the correction knows. */
function startOf(facts: Facts): Gravity | undefined {
  const start = facts.pitched && standing(readingsOfMust(facts)).at(-1)?.gravity;
  return start !== undefined && start >= LOWEST_START ? start : undefined;
}
