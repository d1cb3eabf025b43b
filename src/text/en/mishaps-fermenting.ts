import type { Mishap } from '../../procedure/mishap';
import type { whileFermenting } from '../../procedure/mishaps/while-fermenting';
import { cautions } from './cautions';
import type { MishapWords } from './mishap-words';

/** Warmth, yeast and the calendar, gone wrong. */
export const mishapsWhileFermenting: Record<Extract<Mishap, keyof typeof whileFermenting>, MishapWords> = {
  'too cold': {
    title: 'It got too cold',
    spoken: 'it got too cold',
    tell: 'The wine itself is below its range. Ask a thermometer in the wine, after the night; the room says little.',
    lost: 'Time only. Cold yeast rests, and cold wine looks finished when it is not.',
    reversible: 'All of it. Readings taken in cold wine are kept, and do not count.',
    cautions: ['Never stand a glass vessel on a heat pad or in front of a heater: it cracks from one side.'],
    now: [
      'Wrap it, or carry the warmth to it: a warmer room, a blanket, a belt made for vessels.',
      'Slowly: two or three degrees in a day.',
      'Stir up nothing and add nothing until it has been warm for a day.',
    ],
    again: 'Tomorrow morning, with the thermometer in the wine.',
    look: 'A thermometer in the wine, after the night: is it back in its range?',
    entry: 'What happened: it got too cold.',
  },
  'too hot': {
    title: 'It got too hot',
    spoken: 'it got too hot',
    tell: 'The wine itself is above its range. Fermenting warms it, so it can be hotter than the room.',
    lost: 'Above 30 °C (86 °F) some aroma, and with time the yeast. A few hours cost little.',
    reversible: 'Mostly. If the yeast has died, fresh yeast in cooler wine takes over.',
    cautions: [cautions.airlockPressure],
    now: [
      'Out of the sun, off the heater, away from the boiler.',
      'Wet towels round it and a fan; never ice against glass.',
      'Bring it down within half a day, not within minutes.',
      'Before the yeast: wait until the juice is back in its range.',
    ],
    again: 'In half a day: temperature, and foam.',
    look: 'A thermometer in the wine: is it back in its range?',
    entry: 'What happened: it got too hot.',
  },
  'yeast not started': {
    title: 'The yeast has not started',
    spoken: 'it has not started',
    tell: 'After two days neither foam nor a ring of it, and the gravity has not fallen by 0.003. A silent airlock does not count.',
    lost: 'Nothing yet. There are about four days before something else may take the juice.',
    reversible: 'All of it, within those days.',
    now: [
      'Take the temperature of the juice. Too cold is the usual reason.',
      'Warm it into its range, and stir gently from the bottom, with a sanitised spoon.',
      'Twelve hours later, still nothing: sprinkle fresh yeast, or better, wake it first. Then tell that it was pitched again.',
      'If stabiliser went in by mistake, tell that first.',
    ],
    again: 'In half a day, for foam.',
    look: 'Is there foam, or a ring of it?',
    disagree:
      'Sprinkled dry, or woken in warm water first: shops say the one, science bulletins the other. Both work; for a late start the house wakes it first.',
    entry: 'What happened: the yeast had not started.',
  },
  'pitched again': {
    title: 'Fresh yeast went in',
    spoken: 'I pitched again',
    tell: 'You added yeast a second time, because the first showed no life.',
    lost: 'The days so far: they are counted from this yeast on.',
    reversible: 'Nothing needs to be.',
    now: [
      'Keep it in its range and closed.',
      'The days of the sheet, the readings and the proof of dryness are planned from today.',
      'The empty wrapper goes to the others.',
    ],
    again: 'Tomorrow, for foam.',
    look: 'Is there foam from the new yeast?',
    entry: 'What happened: fresh yeast went in, and the days count from it.',
  },
  'moved too early': {
    title: 'It was moved too early',
    spoken: 'I moved it too early',
    tell: 'It was siphoned off before its gravity was low enough, or though the sheet does not move it now.',
    lost: 'Part of the yeast, left behind with the sediment. It may finish more slowly.',
    reversible: 'Mostly. There is always enough yeast afloat; warmth helps it.',
    cautions: [
      'A full vessel that still ferments can foam out of its neck. Leave room, and stand it in a tray.',
    ],
    now: [
      'Leave a hand’s breadth of room above it. Do not top up while it ferments.',
      'Airlock on, and keep it at the warm end of its range.',
      'Do not pour the sediment after it.',
      'Measure what arrived, when the guide asks.',
    ],
    again: 'Tomorrow, for foam in the neck; then by readings.',
    look: 'Does the foam stay below the neck?',
    entry: 'What happened: it was moved too early.',
  },
  holiday: {
    title: 'I have to go away in the middle of it',
    spoken: 'I have to go away',
    tell: 'Work, illness or a journey: nobody can be there on the next day that is shown.',
    lost: 'Nothing, at most places. The first three days after the yeast, the hours between stabiliser and finings, and open bottles are the ones that cannot wait.',
    reversible: 'The dates: tell when you are away, and what falls into it waits for your return.',
    now: [
      'Give the days of your absence where you stand. The guide says whether the wine can wait so long.',
      'Fill the airlock, and leave the vessel as full as its stage allows.',
      'Ask somebody to look at the airlock once a week.',
      'Begin nothing that has to be ended the same day.',
    ],
    again: 'On your return: airlock, level, temperature; then the gate that is open is asked again.',
    look: 'Are airlock, level and temperature as they should be?',
    entry: 'What happened: the work has to wait for an absence.',
  },
};
