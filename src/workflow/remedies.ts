import type { Problem } from '../domain/problem';
import type { Gate, Phase } from '../procedure/phase';

export type Remedy = { gate: Gate; clause: Problem['code']; to: Phase };

/** The ways back, all of them. A gate has one way forward; from here the machine and the screens know the others. */
export const REMEDIES = [
  { gate: 'proving mixed', clause: 'under-stirred', to: 'mix' },
  { gate: 'proving mixed', clause: 'no-start-reading', to: 'mix' },
  { gate: 'proving mixed', clause: 'start-outside', to: 'mix' },
  { gate: 'proving gas-free', clause: 'gassy', to: 'degas' },
  { gate: 'proving clear', clause: 'cloudy', to: 'clear' },
  { gate: 'proving still', clause: 'still-moving', to: 'ferment' },
  { gate: 'proving still', clause: 'gassy', to: 'degas' },
  { gate: 'proving still', clause: 'no-baseline', to: 'top up' },
  { gate: 'proving still', clause: 'dryness-in-doubt', to: 'top up' },
] as const satisfies readonly Remedy[];

/** The ways back from one gate for the clauses that failed. */
export const remediesFor = (gate: Gate, failed: readonly Problem[]): Remedy[] =>
  REMEDIES.filter((remedy) => remedy.gate === gate && failed.some(({ code }) => code === remedy.clause));
