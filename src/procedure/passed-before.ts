import { RULES } from '../domain/gates/passing';
import type { Facts } from './facts';
import type { Gate } from './phase';

/**
 * Whether a gate was passed under earlier rules and nothing that it rests on has changed since: no reading of it struck,
 * none taken, nothing gone wrong. What was judged then stands; today's rules judge only what comes after.
 */
export function passedBefore(gate: Gate, facts: Facts): boolean {
  const passing = facts.passed[gate];
  return (
    passing !== undefined &&
    passing.rules < RULES &&
    passing.readings.every((entry) => !(entry in facts.struckAt)) &&
    [...facts.readings, ...facts.mishaps].every(({ at }) => at <= passing.at)
  );
}
