import { enFirst } from './en-first';
import { away } from './en/away';
import { bench } from './en/bench';
import { cautions } from './en/cautions';
import { coach } from './en/coach';
import { consequence } from './en/consequence';
import { dictated } from './en/dictated';
import { digest } from './en/digest';
import { doubt } from './en/doubt';
import { ears } from './en/ears';
import { guide } from './en/guide';
import { hands } from './en/hands';
import { judgements } from './en/judgements';
import { override } from './en/override';
import { keys } from './en/keys';
import { ladder, pace, paceTitles, rungs } from './en/pace';
import { gates, places } from './en/places';
import { problems } from './en/problems';
import { school } from './en/school';
import { screens } from './en/screens';
import { sources } from './en/sources';
import { stepNames } from './en/step-names';
import { steps } from './en/steps';
import { labels } from './en/labels';
import { sums } from './en/sums';
import { tonight } from './en/tonight';
import { whatHappened } from './en/what-happened';

/** English: the first language, and the shape of all others. */
export const en = {
  ...enFirst,
  problems,
  screens,
  places,
  gates,
  judgements,
  steps,
  stepNames,
  tonight,
  cautions,
  consequence,
  override,
  doubt,
  pace,
  paceTitles,
  rungs,
  ladder,
  coach,
  guide,
  hands,
  dictated,
  ears,
  keys,
  away,
  sources,
  school,
  sums,
  labels,
  bench,
  whatHappened,
  digest,
};
