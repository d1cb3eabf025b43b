import { between, type MishapRules } from './mishap-rules';

const DAY = 24;
const THREE_DAYS = 72;

/** Sachets: the wrong one, too early, too late, in the wrong order, or not at all. */
export const withSachets = {
  'wrong sachet': {
    at: between('mix', 'bottle'),
    change: 'sachet in',
    asks: 'sachet',
    changesWine: true,
    lookAgainHours: DAY,
  },
  'stabiliser too early': {
    at: between('mix', 'rack'),
    change: 'sachet in',
    asks: 'sachet',
    changesWine: true,
    lookAgainHours: DAY,
  },
  'sweetening too early': {
    at: between('mix', 'proving gas-free'),
    change: 'sachet in',
    mayTell: 'sachet',
    changesWine: true,
    lookAgainHours: DAY,
  },
  'one of a pair': {
    at: between('stabilise', 'rest'),
    change: 'sachet not in',
    asks: 'sachet',
    changesWine: true,
    lookAgainHours: DAY,
  },
  'finings reversed': {
    at: between('fine', 'proving clear'),
    change: 'sachet in',
    mayTell: 'sachet',
    changesWine: true,
    lookAgainHours: THREE_DAYS,
  },
  'finings left out': {
    at: between('top up', 'proving still'),
    change: 'sachet not in',
    asks: 'sachet',
    changesWine: true,
    lookAgainHours: THREE_DAYS,
  },
  'forgot bentonite': {
    at: between('mix', 'proving clear'),
    change: 'sachet left out',
    changesWine: true,
    lookAgainHours: THREE_DAYS,
  },
  'forgot yeast': {
    at: ['ferment'],
    change: 'sachet not in',
    mayTell: 'sachet',
    changesWine: true,
    lookAgainHours: DAY,
  },
  'wrapper too many': {
    at: between('mix', 'bottle'),
    change: 'sachet in',
    asks: 'sachet',
    changesWine: true,
    lookAgainHours: DAY,
  },
  'sachet still full': {
    at: between('mix', 'rest'),
    change: 'sachet not in',
    asks: 'sachet',
    changesWine: true,
    lookAgainHours: DAY,
  },
  'sachet lost': {
    at: between('prepare', 'bottle'),
    change: 'nothing',
    asks: 'sachet',
    changesWine: false,
    lookAgainHours: THREE_DAYS,
  },
  'past its date': {
    at: between('prepare', 'ferment'),
    change: 'nothing',
    changesWine: false,
    lookAgainHours: 48,
  },
} as const satisfies Record<string, MishapRules>;
