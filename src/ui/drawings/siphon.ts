import { CARBOY, levelIn, ROOM_IN_GLASS, type Profile } from './profile';

/** A vessel of a siphon: its outline, and what it holds when full to the brim. */
export type SiphonVessel = { profile: Profile; brim: number };

/** Drawing units between the bottom of the upper vessel and that of the lower. */
export const DROP = 190;
/** The hose takes the wine in above the sediment, and lets it out near the bottom, so that it does not splash. */
const ABOVE_SEDIMENT = 20;
const ABOVE_BOTTOM = 14;

export type Siphon = {
  /** Litres that are in each vessel. */
  left: number;
  arrived: number;
  /** Heights over each vessel's own bottom. */
  upperLevel: number;
  upperBefore: number;
  lowerLevel: number;
  inlet: number;
  outlet: number;
};

/** A siphon when so many of the litres have crossed: what left the one is in the other, and the hose stays in the wine and off the sediment. */
export function siphonOf(from: SiphonVessel, litres: number, crossed: number, sediment: number): Siphon {
  const most = Math.max(0, litres - sediment);
  const arrived = Math.min(Math.max(0, crossed), most);
  const level = ({ profile, brim }: SiphonVessel, amount: number) => levelIn(profile, amount / brim);
  const bed = level(from, sediment);
  const upperLevel = level(from, litres - arrived);
  return {
    left: litres - arrived,
    arrived,
    upperLevel,
    upperBefore: level(from, litres),
    lowerLevel: level({ profile: CARBOY, brim: litres * ROOM_IN_GLASS }, arrived),
    inlet: Math.min(bed + ABOVE_SEDIMENT, (bed + upperLevel) / 2),
    outlet: ABOVE_BOTTOM,
  };
}
