import { between, type MishapRules } from './mishap-rules';

const DAY = 24;

/** Bottles, full or about to be. */
export const withBottles = {
  'gas in bottles': {
    at: between('bottle', 'rest'),
    change: 'nothing',
    changesWine: false,
    lookAgainHours: DAY,
  },
  'closures rising': {
    at: between('bottle', 'rest'),
    change: 'nothing',
    changesWine: false,
    lookAgainHours: DAY,
  },
  'bottle broke': {
    at: between('bottle', 'rest'),
    change: 'bottle lost',
    mayTell: 'litres',
    changesWine: false,
    lookAgainHours: 1,
  },
  'poured back': {
    at: between('bottle', 'rest'),
    change: 'poured back',
    changesWine: true,
    lookAgainHours: DAY,
  },
} as const satisfies Record<string, MishapRules>;
