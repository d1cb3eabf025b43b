import type { Celsius } from '../../domain/unit';
import type { Act } from '../../procedure/step';
import type { Formats } from '../formats';
import { named } from './adding';
import { cautions } from './cautions';
import type { Steps } from './steps';

const secondsOf = (act: Act): number => ('seconds' in act ? act.seconds : 0);

const HOW_TO_READ =
  'Draw a sample, shake its gas out, and take its temperature. Then spin the hydrometer and read it at eye level, at the bottom of the curve.';
const WELL_READ =
  'Take the temperature of the wine in its vessel too: cold wine can look finished. Bubbles lift the hydrometer, and a warm sample reads too low; the guide corrects for warmth. Pour the sample back only if everything was sanitised.';

type Ferment =
  | 'look for life'
  | 'read on the way'
  | 'read for the move'
  | 'sanitise again'
  | 'measure vessel'
  | 'add held-back water'
  | 'siphon off'
  | 'measure wine'
  | 'read towards dry'
  | 'draw reserve'
  | 'stir up sediment'
  | 'leave sediment'
  | 'knock the surface'
  | 'make room for foam'
  | 'stabilisers in hand'
  | 'stir out gas'
  | 'warm for the gas';

const inHand = (act: Act, f: Formats): string =>
  act.kind === 'account' ? f.list(act.sachets.map(named)) : 'every stabiliser';

/** From the first foam to the gas stirred out. */
export const stepsFerment: Pick<Steps, Ferment> = {
  'look for life': (act) => ({
    show: act.nth > 1 ? 'Look once more for foam.' : 'Look for foam, or a ring of it.',
    say: `${act.nth > 1 ? 'Look once more. ' : ''}Shine a torch through the wall or the lid, and look for foam, or a ring where it has been.`,
    why: 'Foam or a falling gravity shows that the yeast lives. A silent airlock shows nothing: lids leak.',
    more: 'Most slow starts are cold. If there is nothing after two days, warm it, stir it, and think of new yeast within four days.',
    caution: cautions.airlockPressure,
  }),
  'read on the way': () => ({
    show: 'Read the gravity.',
    say: HOW_TO_READ,
    why: 'A reading now shows early whether the wine is on its way or has stopped. Lower is later.',
    more: WELL_READ,
    caution: cautions.openingVessel,
  }),
  'read for the move': (act) => ({
    show: act.nth > 1 ? 'Read the gravity once more.' : 'Read the gravity.',
    say: `${act.nth > 1 ? 'One more reading. ' : ''}${HOW_TO_READ}`,
    why: 'Moved too early, the wine can foam out of the new vessel. The right gravity is the one on the sheet or lower: lower is later.',
    more: WELL_READ,
    caution: cautions.openingVessel,
  }),
  'sanitise again': () => ({
    show: 'Sanitise the siphon, its hose and the second vessel.',
    say: 'Sanitise the siphon, its hose, the second vessel, its stopper and its airlock. Rinse them as the label says.',
    why: 'From here on the wine has less and less to defend itself with.',
    more: 'Run sanitiser through the hose, not only over it. Leave it on as long as the label says.',
    caution: cautions.sanitiser,
  }),
  'measure vessel': () => ({
    show: 'Measure how much the second vessel holds to the brim.',
    say: 'Find out how much the second vessel holds to the brim. Its label or its base usually says so.',
    why: 'From this the guide reckons whether powder and stirring will have room to foam.',
    more: 'If nothing is written on it, fill it with drinking water by the measuring jug, and sanitise it once more.',
  }),
  'add held-back water': ({ litres }, f) => ({
    show: `Pour in the ${litres === undefined ? 'water' : `${f.litres(litres)} of water`} that was held back.`,
    say: `When the foam is down, pour in ${litres === undefined ? 'the water that was held back' : `${f.litres(litres)} of water`}. Pour it slowly down the wall, and stir it in gently.`,
    why: 'Mixing day left it out so that foam had room. It belongs to the recipe: without it the wine is too strong.',
    more: 'Drinking water, as warm as the wine: cold water chills the yeast. Stop if foam climbs, and go on when it has sunk. The next reading is a little lower from the water alone.',
    caution: cautions.openingVessel,
  }),
  'siphon off': () => ({
    show: 'Siphon off (rack) the wine into the clean vessel.',
    say: 'Clip the siphon well above the sediment, and keep the end of the hose under the wine. Stop when it starts to draw sludge.',
    why: 'Sediment that stays behind now does not cloud the bottles later. Without splashing, no air gets in.',
    more: 'The full vessel must stand higher than the empty one; raise it the day before, and let it settle. Fill the hose with water to start it. Tilt the vessel gently at the end, and leave the last of it.',
    caution: `${cautions.byMouth} ${cautions.lifting}`,
  }),
  'measure wine': () => ({
    show: 'Measure how much wine there is now.',
    say: 'Look at the marks on the vessel, and tell me how much wine there is now.',
    why: 'How many bottles it makes, and how strong it is after topping up, is reckoned from this.',
    more: 'No marks? Measure from the bottom with a ruler, and compare with what the vessel holds.',
  }),
  'read towards dry': (act) => ({
    show: act.nth > 1 ? 'Read the gravity once more.' : 'Read the gravity.',
    say: `${act.nth > 1 ? 'One more reading. ' : ''}${HOW_TO_READ}`,
    why: 'One low reading proves nothing, though lower is later. Low, unchanged over days, and warm: that is finished.',
    more: WELL_READ,
    caution: cautions.openingVessel,
  }),
  'draw reserve': ({ litres }, f) => ({
    show: `Draw off ${litres === undefined ? 'the reserve' : f.litres(litres)} into a clean jar.`,
    say: `Draw off ${litres === undefined ? 'the reserve' : f.litres(litres)} without splashing. Fill the jar to its neck, close it with an airlock, and keep it cool.`,
    why: 'It makes room for the stirring, and fills the vessel again later: no water, no other wine.',
    more: 'A jar that is not full takes in air. Use a smaller one, or two.',
    caution: cautions.byMouth,
  }),
  'stir up sediment': () => ({
    show: 'Stir the sediment up from the bottom.',
    say: 'Stir the sediment up from the bottom, slowly, until none lies there.',
    why: 'It looks wrong and is right: in this kit the finings take hold of the sediment and carry it down together.',
    more: 'Do not siphon the wine off first, as one would with other wines.',
    caution: cautions.stirringGas,
  }),
  'leave sediment': () => ({
    show: 'Leave the sediment where it is.',
    say: 'Leave the sediment lying. From here on, stir without touching the bottom.',
    why: 'This kit’s sheet leaves it there until the wine has cleared.',
    more: 'A little that comes up does no harm; it settles again.',
  }),
  'knock the surface': (act) => ({
    show: act.nth > 1 ? 'Knock the surface once more with a spoon.' : 'Knock the surface with a clean spoon.',
    say: `Stand back. Knock the surface ${act.nth > 1 ? 'once more' : 'once'} with a sanitised spoon, for one second, and watch.`,
    why: 'Powder in gassy wine brings all the gas out at once. A knock shows it before there is powder in it.',
    more: 'A few bubbles are calm. Foam that climbs is a rush: stir that gas out first.',
    caution: 'Gas can rush up with foam. Stand back, and have a cloth ready.',
  }),
  'make room for foam': ({ litres, nth }, f) => ({
    show: `Draw off wine ${nth > 1 ? 'once more, ' : ''}until ${litres === undefined ? 'foam has room' : `${f.litres(litres)} are left`}.`,
    say: `Draw wine off ${nth > 1 ? 'once more, ' : ''}into a clean jar, without splashing, until ${litres === undefined ? 'foam has room' : `${f.litres(litres)} are left`}. Then tell me how much is in the vessel.`,
    why: 'Powder and stirring bring up foam. It needs about a twentieth of the wine as room, or it leaves over the rim.',
    more: 'Fill the jar to its neck, close it with an airlock and keep it cool: nothing is better to top up with. A sanitised jar and hose, as for the reserve.',
  }),
  'stabilisers in hand': (act, f) => ({
    show: 'Take every stabiliser in hand, and open none.',
    say: `Take in hand ${inHand(act, f)}. Check each by its name, and open none yet.`,
    why: 'They work together. Sorbate without sulphite can turn to a smell of geraniums, and nothing takes it away.',
    more: 'Sulphite belongs on the label: some people react to it.',
  }),
  'stir out gas': (act, f) => ({
    show:
      act.nth === 1 || act.nth === 101
        ? `Stir out the gas for ${f.duration(secondsOf(act))}.`
        : `Stir once more, for ${f.duration(secondsOf(act))}.`,
    say: `${act.nth === 1 || act.nth === 101 ? 'Stir to and fro, hard, without splashing' : 'Stir once more, hard, without splashing'}. Turn about at the beep, and go on for ${f.duration(secondsOf(act))}.`,
    why: 'Gas holds sediment up and pushes at corks. Stirring round and round lets the wine swim along; turning about shakes the gas out.',
    more: `${cautions.drill} Keep the whisk under the surface: air is no longer welcome. Warm wine lets its gas go more easily than cold.`,
    ...(act.nth === 1 || act.nth === 101 ? { caution: `${cautions.stirringGas} ${cautions.drill}` } : {}),
  }),
  'warm for the gas': ({ nth }, f) => ({
    show: `Warm the wine to ${f.celsius(20 as Celsius)}${nth > 1 ? ' once more' : ''}, and take its temperature.`,
    say: `Leave the wine somewhere warmer ${nth > 1 ? 'once more' : 'under its airlock'}, for a day at most. At ${f.celsius(20 as Celsius)} or more, tell me its temperature; then the gas test comes again.`,
    why: 'Warm wine lets go of gas that cold wine holds. After so many rounds, more stirring only lets in air.',
    more: 'Warm the room, or wrap the vessel. Never stand it on a heat pad, least of all glass.',
  }),
};
