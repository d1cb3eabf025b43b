import type { Act } from '../../procedure/step';

type LitresAct = Extract<Act, { kind: 'litres' }>;
const litres: Record<LitresAct['of'], { label: string; hint: (suggested: string) => string }> = {
  brim: {
    label: 'What the vessel holds, full to the brim',
    hint: (suggested) => `Foam needs room: about ${suggested} is comfortable for this batch.`,
  },
  must: {
    label: 'Where the surface stands now',
    hint: (suggested) => `The mark for this batch is at ${suggested}.`,
  },
  wine: {
    label: 'How much wine arrived',
    hint: (suggested) => `There was ${suggested} before. What is missing stayed with the sediment.`,
  },
  vessel: {
    label: 'What the second vessel holds, full to the brim',
    hint: (suggested) => `The wine is about ${suggested}. What is left above it is room for foam.`,
  },
  room: {
    label: 'How much wine is in the vessel now',
    hint: (suggested) =>
      `${suggested} when enough is drawn off. Keep what you drew off full, airlocked and cool.`,
  },
  'top-up': { label: 'How much you topped up with', hint: () => 'Nothing added counts as 0.' },
};

/** The words of the other cards: what is asked at an act, and in which unit. */
export const cards = {
  litres,

  clock: {
    notStarted: (duration: string) => `${duration} by the clock`,
    paused: 'The clock is held.',
    timeUp: 'Time is up.',
    late: (duration: string) => `Time was up ${duration} ago.`,
    turnFirst: 'Bottom to top, the first way round.',
    turnOther: 'Now the other way round.',
    nextTurn: (duration: string) => `Next turn in ${duration}.`,
    spoken: (left: string) => `${left} left on the clock`,
  },

  temperature: {
    must: 'Warmth of the must',
    wine: 'Warmth of the wine',
    range: (lowest: string, highest: string) => `The yeast wants ${lowest} to ${highest}.`,
    atLeast: (lowest: string) => `It should be ${lowest} or warmer.`,
  },
  gap: {
    label: 'From the wine up to the stopper',
    hint: (atMost: string) => `At most ${atMost}: the less air, the better it keeps.`,
    unit: 'mm',
  },
  filled: {
    label: 'Bottles filled and closed',
    hint: (wanted: string) => `The wine should make about ${wanted}.`,
  },
  bottles: {
    bottles: 'Bottles, sound and clean',
    closures: 'Closures to go with them',
    hint: (wanted: string) => `The wine makes about ${wanted} bottles.`,
    closuresHint: 'A few more than bottles: some go astray.',
    threaded: 'Do the bottles have a screw thread?',
  },

  instrument: {
    division: 'From one fine line to the next it is',
    fine: '0.001',
    coarse: '0.002',
    calibration: 'The temperature printed on it is',
    twenty: '20\u00a0°C (68\u00a0°F)',
    sixty: '15.56\u00a0°C (60\u00a0°F)',
    water: 'What it shows in plain water',
    waterHint: 'Close to 1.000. What it is off by is taken off every reading from now on.',
    celsius: 'Warmth of that water',
    scale: (division: string) => `A piece of scale with a line at every ${division}`,
  },
};
