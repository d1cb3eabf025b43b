import type { Mishap } from '../../procedure/mishap';
import { cautions } from './cautions';
import type { MishapWords } from './mishap-words';

const GLASS_TO_SWEEP =
  'Splinters cannot be seen in liquid. Shoes on, gloves on, children and animals out; wipe with wet paper, and throw the paper away.';

/** Bungs, airlocks and the hydrometer, gone wrong. */
export const mishapsWithGear = {
  'stuck bung': {
    title: 'The bung or the lid is stuck',
    spoken: 'the bung is stuck',
    tell: 'It does not come out, or it went in too far.',
    lost: 'Nothing.',
    reversible: 'All of it, with patience.',
    cautions: [
      cautions.airlockPressure,
      'Glass breaks when it is forced. Do not hammer, do not lever, and hold it with gloves or a thick cloth.',
    ],
    now: [
      'Let the pressure out first: lift the airlock out of its hole.',
      'Twist and pull, with a dry cloth. Warm the neck from outside with your hand or a warm, wet cloth; never hot water on glass.',
      'Fallen inside: leave it there until the wine is moved. A sanitised bung does no harm. Close with a new one.',
      'A bucket’s lid: start at one spot and go round.',
    ],
    again: 'In an hour: is it closed again, with the airlock in?',
    look: 'Is it closed again, with the airlock in?',
    entry: 'What happened: the bung or the lid was stuck.',
  },
  'silent airlock': {
    title: 'The airlock is silent',
    spoken: 'the airlock is silent',
    tell: 'No bubbles. That alone means nothing: lids leak, and warming air bubbles too.',
    lost: 'Nothing.',
    reversible: 'There is nothing to reverse.',
    now: [
      'Look for foam, or a ring where foam has been.',
      'Take a reading. It tells in a minute what the airlock never can.',
      'Press lid and grommet down, and see that the airlock has water.',
    ],
    again: 'Tomorrow, with a reading or a look at the foam.',
    look: 'Is there foam, or has the gravity fallen?',
    disagree:
      'One old newsgroup answer trusts the airlock. Nearly everybody else does not, and neither does the house.',
    entry: 'What happened: the airlock was silent.',
  },
  'airlock dry': {
    title: 'The airlock ran dry',
    spoken: 'the airlock ran dry',
    tell: 'No water stands in it.',
    lost: 'While gas flows out, nothing. On a quiet wine, some freshness: air got in for as long as it was dry.',
    reversible:
      'Fill it, and look at the colour. Days are nothing; weeks on a half-full vessel may brown it.',
    now: [
      'Fill it with fresh water up to its line.',
      'Look at the surface for a film, and at the colour against a photograph from before.',
      'If fermentation is over, top the vessel up.',
      'Fill it once a week from now on.',
    ],
    again: 'Tomorrow, and then every week.',
    look: 'Does its water still stand at the line?',
    entry: 'What happened: the airlock ran dry.',
  },
  'airlock sucked in': {
    title: 'Airlock water was sucked into the wine',
    spoken: 'the airlock was sucked in',
    tell: 'The airlock is empty after a cold night, after lifting, or after the vessel was squeezed.',
    lost: 'Nothing that can be tasted: it is a spoonful of water.',
    reversible:
      'All of it, if it was water. Sanitiser in that amount is harmless too, if its label allows it without rinsing.',
    now: [
      'Fill it again with clean water.',
      'Keep the room steady: the wine shrinks as it cools, and draws in air.',
      'Lift a plastic vessel with the airlock out.',
      'If anything else stood in the airlock, write it down as a note.',
    ],
    again: 'Tomorrow, after the night.',
    look: 'Did the airlock keep its water through the night?',
    entry: 'What happened: water from the airlock was sucked in.',
  },
  'hydrometer broken': {
    title: 'The hydrometer broke, outside the wine',
    spoken: 'the hydrometer broke',
    tell: 'It broke in its jar, in the sink or on the floor; none of it fell into the vessel.',
    lost: 'The instrument, and the sample that was with it.',
    reversible: 'The batch goes on. Readings wait until another hydrometer was checked in water.',
    cautions: [GLASS_TO_SWEEP, 'The little balls inside are lead or steel: wash your hands.'],
    now: [
      'Pour nothing back: neither the sample nor what is in the jar.',
      'Throw the jar away if it is scratched.',
      'Get another hydrometer. It is checked in plain water before its readings count.',
      'Until then the wine keeps, warm and closed. A bottle weighed full to the brim shows roughly where it is; that is a hint, and passes no gate.',
    ],
    again: 'Tomorrow: is there another one?',
    look: 'Do you have another one, to be checked in plain water?',
    entry: 'What happened: the hydrometer broke, outside the wine.',
  },
  'hydrometer in the wine': {
    title: 'The hydrometer broke in the wine',
    spoken: 'the hydrometer broke in the wine',
    tell: 'It broke in the vessel itself, or pieces are missing that can be nowhere else.',
    lost: 'The wine, for drinking. There is glass in it, and perhaps lead from its weight. No siphon, cloth or settling finds every splinter.',
    reversible:
      'Only the doubt. If every piece lies outside the vessel, take it back and tell that it broke outside.',
    cautions: [
      'Glass in wine cuts inside. Do not taste it, do not strain and drink it, and do not give it away.',
      GLASS_TO_SWEEP,
    ],
    now: [
      'Close the vessel and write “glass” on it.',
      'Lay the pieces together, on paper, without touching them. Are they all there?',
      'If one is missing, end the batch as discarded. Pour it down a drain slowly, through a sieve that you then throw away.',
      'The guide does not lead this wine into bottles.',
    ],
    again: 'In an hour, when the pieces lie there: all of them, or not?',
    look: 'Do all its pieces lie outside, and is the vessel closed and marked?',
    entry: 'What happened: the hydrometer broke in the wine. Advised to discard it.',
  },
} satisfies Partial<Record<Mishap, MishapWords>>;
