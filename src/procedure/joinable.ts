import { PHASES, type Phase } from './phase';

/** The phases before there is anything to join with: no juice is in the vessel yet. */
const BEFORE_THE_JUICE = ['prepare', 'clean', 'sanitise'] as const satisfies readonly Phase[];

/** How far a batch can have come when the guide is told of it. */
export type Joinable = Exclude<Phase, (typeof BEFORE_THE_JUICE)[number]>;

const isJoinable = (phase: Phase): phase is Joinable =>
  !(BEFORE_THE_JUICE as readonly Phase[]).includes(phase);

export const JOINABLE = PHASES.filter(isJoinable);
