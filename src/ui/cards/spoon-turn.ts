const DEGREES_A_SECOND = 110;

/** Degrees that the spoon has gone round after some seconds: forth, and back again from each reversal on. */
export function spoonTurn(run: number, reverseSeconds: number | undefined): number {
  if (reverseSeconds === undefined) return run * DEGREES_A_SECOND;
  const within = run % (2 * reverseSeconds);
  return Math.min(within, 2 * reverseSeconds - within) * DEGREES_A_SECOND;
}
