import { open, shut, type Verdict } from '../verdict';

/** Is the vessel full? The wine stands no further below its stopper than the sheet says. */
export function toppedUp(millimetres: number | undefined, atMost: number): Verdict {
  if (millimetres === undefined) return shut({ code: 'gap-not-measured' });
  return millimetres > atMost ? shut({ code: 'gap-too-wide', millimetres, atMost }) : open;
}
