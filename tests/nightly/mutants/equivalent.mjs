/**
 * Mutants that no spec can catch, because they change nothing that can be seen, each with why.
 * @type {Readonly<Record<string, string>>}
 */
export const EQUIVALENT = {};
