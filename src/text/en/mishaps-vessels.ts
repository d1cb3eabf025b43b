import type { Mishap } from '../../procedure/mishap';
import type { withVessels } from '../../procedure/mishaps/with-vessels';
import { cautions } from './cautions';
import type { MishapWords } from './mishap-words';

const GLASS_TO_SWEEP =
  'Splinters cannot be seen in liquid. Shoes on, gloves on, children and animals out; wipe with wet paper, and throw the paper away.';

/** Vessels, litres, airlocks and the hydrometer, gone wrong. */
export const mishapsWithVessels: Record<Extract<Mishap, keyof typeof withVessels>, MishapWords> = {
  'over-filled': {
    title: 'It was filled too high',
    spoken: 'it is over filled',
    tell: 'The level stands above the mark. Check the mark itself first: a batch for the smaller vessel has been poured into the larger.',
    lost: 'Strength and body, by as much as there is too much water. Water does not come out again.',
    reversible:
      'The room for foam: some can be drawn off into a closed jar with an airlock. The start gravity tells how thin it became.',
    now: [
      'Stop pouring. Measure what stands there.',
      'Before the yeast: stir and read again, so that the start is a true one.',
      'Draw some off into a sanitised jar if the level is closer to the lid than a hand’s breadth.',
      'Do not add sugar to make up for it without doing the sum; it unbalances the wine.',
    ],
    again: 'In half a day, for foam near the lid.',
    look: 'Is there room left between the foam and the lid?',
    entry: 'What happened: it was filled too high.',
  },
  'under-filled': {
    title: 'It was filled too low',
    spoken: 'it is under filled',
    tell: 'The level stands below the mark, and the start gravity above the sheet’s range.',
    lost: 'Nothing: what is missing is water.',
    reversible: 'All of it before the yeast, and nearly all in the first three days.',
    now: [
      'Before the yeast: fill up to the mark, stir by the clock, and read again.',
      'In the first three days after it: fill up with water of the same warmth, and stir gently.',
      'Later than that: leave it. It is a little stronger, and there are fewer bottles.',
      'Give below what stands in the vessel now, so that bottles and doses are counted right.',
    ],
    again: 'Tomorrow: level and foam.',
    look: 'Does the level stand as you left it, and is there foam?',
    entry: 'What happened: it was filled too low.',
  },
  'gallons confused': {
    title: 'US gallons and imperial gallons were mixed up',
    spoken: 'I mixed up US gallons and imperial gallons',
    tell: 'The volume is off by a fifth: 6 imperial gallons are 27.3 litres, 6 US gallons are 22.7.',
    lost: 'If it is too much, a fifth of the strength. If it is too little, nothing.',
    reversible: 'Too little can be filled up. Too much stays, and the doses are weaker for it.',
    now: [
      'Measure what stands in the vessel, in litres.',
      'Before the yeast: if it is too little, fill up; in both cases stir and read again.',
      'Give below what stands there now. Doses and bottles are counted from it.',
      'Write the unit on the vessel’s mark.',
    ],
    again: 'Tomorrow: is the start gravity in the sheet’s range?',
    look: 'Is the start gravity in the sheet’s range now?',
    entry: 'What happened: US gallons and imperial gallons were mixed up.',
  },
  'foamed over': {
    title: 'It foamed over',
    spoken: 'it foamed over',
    tell: 'Foam in the airlock, on the lid, or on the floor.',
    lost: 'What is on the floor. A lively ferment is a good sign.',
    reversible: 'All of it. Foam that went up does no harm to what stayed.',
    cautions: [cautions.airlockPressure],
    now: [
      'Take the airlock off, rinse it, and put a clean one on; or a wide hose into a jar of water until it calms down.',
      'Wipe the lid with sanitiser: fruit flies come within the hour.',
      'Stand the vessel in a tray, and take some of the warmth away if it is above its range.',
      'If you know how much was lost, give it below.',
    ],
    again: 'In half a day, and before you go to bed.',
    look: 'Is the airlock clean, and the foam below the lid?',
    entry: 'What happened: it foamed over.',
  },
  'wine spilled': {
    title: 'Some was spilled or drawn off',
    spoken: 'some wine was spilled',
    tell: 'The level is lower, and you know why: a spill, a leaking tap, a taste too many.',
    lost: 'So many litres, and the bottles that they would have filled.',
    reversible: 'The air above the wine: after fermenting, top up, or move it into a smaller vessel.',
    cautions: ['Wet floors and full vessels do not go together. Wipe first, then look.'],
    now: [
      'Find the leak before you do anything else. Tighten it, or siphon the rest into a sound vessel.',
      'Give below how much is gone. Doses that go by volume and the count of bottles follow.',
      'A sheet’s whole sachet stays one whole sachet: never split it.',
    ],
    again: 'Tomorrow: is it dry underneath?',
    look: 'Is it dry underneath?',
    entry: 'What happened: some was spilled or drawn off.',
  },
  'topped up unasked': {
    title: 'Something was poured in out of turn',
    spoken: 'something was poured in',
    tell: 'The level is higher than it was, and someone knows why.',
    lost: 'The comparison: a reading from before says nothing about a wine that something was added to.',
    reversible:
      'All of it, if it was wine or water. Juice or sugar starts the yeast again: then tell of sweetening as well, or wait for the readings to show it.',
    now: [
      'Find out what it was, and how much.',
      'Half a litre of water takes a batch of 23 litres from 13 to about 12.7 per cent of alcohol.',
      'Take a new reading today, gently stirred. It is the baseline from now on.',
    ],
    again: 'Tomorrow: has the level stayed, and does the airlock hold?',
    look: 'Has the level stayed, and does the airlock hold?',
    entry: 'What happened: something was poured in out of turn.',
  },
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
};
