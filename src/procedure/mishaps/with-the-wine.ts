import { between, type MishapRules } from './mishap-rules';

const DAY = 24;
const THREE_DAYS = 72;
const WEEK = 168;

/** How the wine looks and smells. */
export const withTheWine = {
  'sediment stirred up': {
    at: between('clear', 'bottle'),
    change: 'stirred up',
    changesWine: false,
    lookAgainHours: DAY,
  },
  'rotten eggs': {
    at: between('ferment', 'rest'),
    change: 'nothing',
    changesWine: false,
    lookAgainHours: THREE_DAYS,
  },
  geranium: {
    at: between('ferment', 'rest'),
    change: 'nothing',
    changesWine: false,
    lookAgainHours: WEEK,
  },
  'struck match': {
    at: between('mix', 'rest'),
    change: 'nothing',
    changesWine: false,
    lookAgainHours: WEEK,
  },
  browning: {
    at: between('ferment', 'rest'),
    change: 'nothing',
    changesWine: false,
    lookAgainHours: WEEK,
  },
  crystals: {
    at: between('clear', 'rest'),
    change: 'nothing',
    changesWine: false,
    lookAgainHours: WEEK,
  },
  'film or vinegar': {
    at: between('ferment', 'rest'),
    change: 'nothing',
    changesWine: false,
    lookAgainHours: DAY,
  },
} as const satisfies Record<string, MishapRules>;
