/** From which states of a graph some goal can be reached: its edges walked backwards from the goals. */
export function waysOn(
  states: number,
  edges: readonly (readonly [from: number, to: number])[],
  goals: readonly number[],
): Set<number> {
  const into: number[][] = Array.from({ length: states }, () => []);
  for (const [from, to] of edges) into[to]?.push(from);
  const leading = new Set(goals);
  const waiting = [...goals];
  for (let at = waiting.pop(); at !== undefined; at = waiting.pop())
    for (const from of into[at] ?? []) {
      if (leading.has(from)) continue;
      leading.add(from);
      waiting.push(from);
    }
  return leading;
}
