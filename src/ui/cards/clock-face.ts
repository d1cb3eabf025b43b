/** Seconds as a clock shows them: "3:42", or "1:05:09" from an hour on. */
export function digits(seconds: number): string {
  const whole = Math.max(0, Math.ceil(seconds));
  const two = (value: number): string => String(value).padStart(2, '0');
  const minutes = Math.floor(whole / 60);
  return whole < 3600
    ? `${minutes}:${two(whole % 60)}`
    : `${Math.floor(minutes / 60)}:${two(minutes % 60)}:${two(whole % 60)}`;
}

/** Which way round to stir after some seconds, and how long until the next turn; none where the time is over by then. */
export function turnAt(
  run: number,
  seconds: number,
  reverseSeconds: number,
): { other: boolean; nextIn?: number } {
  const turns = Math.floor(run / reverseSeconds);
  const next = (turns + 1) * reverseSeconds;
  return { other: turns % 2 === 1, ...(next < seconds ? { nextIn: next - run } : {}) };
}
