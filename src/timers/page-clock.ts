import type { Instant } from '../domain/unit';
import { agree, type Agreed, type Anchor, type Look } from './clocks';

/** What a page's clock asks the device: both clocks, and whether the page was out of sight since the last question. */
export type ClockDevice = { look: () => Look; wasOutOfSight: () => boolean };

/** The time within one life of a page. It never runs back; `odd` is told when the device's two clocks fell out. */
export function pageClock(
  device: ClockDevice,
  odd: (what: NonNullable<Agreed['odd']>) => void,
): () => Instant {
  let anchor: Anchor = { ...device.look(), skew: 0 };
  let last = anchor.wall;
  return () => {
    const agreed = agree(anchor, device.look(), device.wasOutOfSight());
    anchor = agreed.anchor;
    last = Math.max(last, agreed.now) as Instant;
    if (agreed.odd) odd(agreed.odd);
    return last;
  };
}
