import { between, type MishapRules } from './mishap-rules';

const HALF_A_DAY = 12;
const DAY = 24;

/** Warmth, yeast, and the calendar. */
export const whileFermenting = {
  'too cold': {
    at: between('mix', 'proving still'),
    change: 'nothing',
    changesWine: false,
    lookAgainHours: DAY,
  },
  'too hot': {
    at: between('mix', 'proving still'),
    change: 'nothing',
    changesWine: false,
    lookAgainHours: HALF_A_DAY,
  },
  'yeast not started': {
    at: ['ferment'],
    change: 'nothing',
    changesWine: false,
    lookAgainHours: HALF_A_DAY,
  },
  'pitched again': {
    at: ['ferment'],
    change: 'pitched again',
    changesWine: true,
    lookAgainHours: DAY,
  },
  'moved too early': {
    at: ['ferment'],
    change: 'moved early',
    changesWine: true,
    lookAgainHours: DAY,
  },
  holiday: {
    at: between('prepare', 'rest'),
    change: 'nothing',
    changesWine: false,
    lookAgainHours: DAY,
  },
} as const satisfies Record<string, MishapRules>;
