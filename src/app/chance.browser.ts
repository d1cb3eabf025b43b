/** A number that nobody can foresee, from which chance that can be repeated begins. */
export const chance = (): number => crypto.getRandomValues(new Uint32Array(1))[0] ?? 0;
