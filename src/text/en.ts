import { bench } from './en/bench';
import { cautions } from './en/cautions';
import { judgements } from './en/judgements';
import { gates, places } from './en/places';
import { problems } from './en/problems';
import { screens } from './en/screens';
import { stepNames } from './en/step-names';
import { steps } from './en/steps';
import { tonight } from './en/tonight';
import { units } from './en/units';

/** English: the first language, and the shape of all others. */
export const en = {
  language: 'en',
  name: 'English',
  units,
  places,
  gates,
  judgements,
  steps,
  stepNames,
  problems,
  tonight,
  cautions,
  screens,
  bench,
};
