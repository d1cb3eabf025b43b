/** The phases that the maker walks through, in the order of the procedure. */
export const PHASES = [
  'prepare',
  'clean',
  'sanitise',
  'mix',
  'pitch',
  'ferment',
  'rack',
  'stabilise',
  'degas',
  'fine',
  'top up',
  'clear',
  'bottle',
  'stand',
  'label',
  'wash up',
  'rest',
] as const;
export type Phase = (typeof PHASES)[number];

/** The gates between them: each a state with one way forward. */
export const GATES = [
  'proving mixed',
  'proving dry',
  'proving gas-free',
  'proving clear',
  'proving still',
] as const;
export type Gate = (typeof GATES)[number];

/** The ways a batch can end. */
export const ENDS = ['finished', 'kept unbottled', 'discarded', 'left the guide'] as const;
export type End = (typeof ENDS)[number];

export type Place = Phase | Gate | End;

/** Every place of the procedure in order, gates where they stand. */
export const COURSE: readonly (Phase | Gate)[] = PHASES.flatMap((phase): (Phase | Gate)[] => {
  const after: Partial<Record<Phase, Gate[]>> = {
    mix: ['proving mixed'],
    ferment: ['proving dry'],
    degas: ['proving gas-free'],
    clear: ['proving clear', 'proving still'],
  };
  return [phase, ...(after[phase] ?? [])];
});

/** Whether one place lies behind another in the procedure. */
export const comesAfter = (place: Phase | Gate, other: Phase | Gate): boolean =>
  COURSE.indexOf(place) > COURSE.indexOf(other);

export const isGate = (place: Place): place is Gate => (GATES as readonly Place[]).includes(place);
export const isPhase = (place: Place): place is Phase => (PHASES as readonly Place[]).includes(place);
export const isEnd = (place: Place): place is End => (ENDS as readonly Place[]).includes(place);
