import type { Mishap } from '../../procedure/mishap';
import { cautions } from './cautions';
import type { MishapWords } from './mishap-words';

/** Too much, too little, or something lost from the vessel. */
export const mishapsWithLitres = {
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
} satisfies Partial<Record<Mishap, MishapWords>>;
