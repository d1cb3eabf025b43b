import type { Formats } from '../formats';
import { units } from './units';

const warm =
  (what: string) =>
  ({ units: { temperature } }: Formats): string =>
    `How warm is ${what}, in ${units.degrees[temperature]}?`;

/** A card that is filled in by voice: what is asked, one thing after another, and how to say it. */
export const dictated = {
  asks: {
    reading: () => 'What does the hydrometer read?',
    sampleCelsius: warm('the sample'),
    wineCelsius: warm('the wine itself'),
    degassed: () => 'Was the gas stirred out of the sample?',
    returned: () => 'Did the sample go back into the wine, from a sanitised jar?',
    celsius: warm('it'),
    litres: ({ units: { volume } }: Formats) => `How many ${units.volume[volume].other}?`,
    millimetres: () => 'How many millimetres?',
    bottles: () => 'How many sound bottles are there?',
    closures: () => 'How many closures are there?',
    threaded: () => 'Do the bottles have a screw thread?',
    filled: () => 'How many bottles are filled and closed?',
    isCoarse: () => 'Are the fine lines of the hydrometer two thousandths apart?',
    isOfSixty: () => 'Does it have sixty degrees Fahrenheit printed on it?',
    waterReading: () => 'What does it read in plain water?',
    waterCelsius: warm('the water'),
  },
  /** How a number can be said. */
  ways: {
    gravity:
      'Say it as you read it: one point zero five four, or ten fifty-four, or nine nine six. One far above the last has to be typed.',
    temperature:
      'Say it like this: twenty-one and a half, or twenty-one point five. Colder than 10 °C (50 °F) has to be typed.',
    litres: 'Say it like this: twenty-three, or twenty-two and a half.',
    gallons: 'Say it like this: six, or five and a half.',
    minutes: 'Say a number of minutes, such as five.',
    count: 'Say a whole number, such as twenty-nine.',
  },
  /** What was taken, said back before the next question. */
  echo: (answer: string) => `${answer.charAt(0).toUpperCase()}${answer.slice(1)}.`,
  answers: { yes: 'Yes.', no: 'No.' },
  notCounted: 'Then that one does not count.',
  takeSample: (phrase: string) => `Take the sample and read it. Then say: ${phrase}.`,
  writeDown: (phrase: string) => `When you have it, say: ${phrase}.`,
  title: 'Told by voice',
  open: 'not told yet',
};
