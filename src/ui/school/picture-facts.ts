import type { Formats } from '../../text/formats';
import type { Text } from '../../text/text';
import type { Look, Round } from './round';
import { numberAbove, seen } from './seen';

/** What the drawing shows, in counts of lines: enough to read it by, and no more than the eye has. */
export function pictureFacts(
  round: Round,
  look: Look,
  { gravity, number }: Formats,
): Parameters<Text['school']['picture']>[0] {
  const { division } = round;
  const { flat, rim, edge, isHeld } = seen(round, look);
  const from = numberAbove(flat, division);
  const lines = (span: number) => number(Math.abs(span) / division, 1);
  return {
    division: number(division / 10_000, 3),
    lines: lines(flat - from),
    number: gravity(from),
    eye: look.eye,
    edgeLines: lines(edge - flat),
    rimLines: lines(flat - rim),
    held: isHeld && round.held ? round.held.by : 'nothing',
  };
}
