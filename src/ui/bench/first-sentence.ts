/** What is said first, and what it goes on to say. A full stop within a number ends no sentence. */
export function firstSentence(told: string): { first: string; rest: string } {
  const [first = '', ...rest] = told.split(/(?<=[.?!]) /);
  return { first, rest: rest.join(' ') };
}
