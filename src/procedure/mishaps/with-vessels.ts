import { between, type MishapRules } from './mishap-rules';

const HALF_A_DAY = 12;
const DAY = 24;

/** Vessels, their litres, and what closes them. */
export const withVessels = {
  'over-filled': {
    at: between('mix', 'ferment'),
    change: 'filled anew',
    mayTell: 'litres',
    changesWine: true,
    lookAgainHours: HALF_A_DAY,
  },
  'under-filled': {
    at: between('mix', 'ferment'),
    change: 'filled anew',
    mayTell: 'litres',
    changesWine: true,
    lookAgainHours: DAY,
  },
  'gallons confused': {
    at: between('mix', 'ferment'),
    change: 'filled anew',
    mayTell: 'litres',
    changesWine: true,
    lookAgainHours: DAY,
  },
  'foamed over': {
    at: between('pitch', 'proving gas-free'),
    change: 'litres lost',
    mayTell: 'litres',
    changesWine: false,
    lookAgainHours: HALF_A_DAY,
  },
  'wine spilled': {
    at: between('mix', 'bottle'),
    change: 'litres lost',
    asks: 'litres',
    changesWine: false,
    lookAgainHours: DAY,
  },
  'topped up unasked': {
    at: between('ferment', 'bottle'),
    change: 'topped up',
    asks: 'litres',
    changesWine: true,
    lookAgainHours: DAY,
  },
  'stuck bung': {
    at: between('pitch', 'bottle'),
    change: 'nothing',
    changesWine: false,
    lookAgainHours: 1,
  },
  'silent airlock': {
    at: between('ferment', 'proving dry'),
    change: 'nothing',
    changesWine: false,
    lookAgainHours: DAY,
  },
  'airlock dry': {
    at: between('ferment', 'bottle'),
    change: 'nothing',
    changesWine: false,
    lookAgainHours: DAY,
  },
  'airlock sucked in': {
    at: between('ferment', 'bottle'),
    change: 'nothing',
    changesWine: false,
    lookAgainHours: DAY,
  },
  'hydrometer broken': {
    at: between('prepare', 'bottle'),
    change: 'instrument gone',
    changesWine: false,
    lookAgainHours: DAY,
  },
  'hydrometer in the wine': {
    at: between('mix', 'bottle'),
    change: 'glass in wine',
    changesWine: true,
    lookAgainHours: 1,
  },
} as const satisfies Record<string, MishapRules>;
