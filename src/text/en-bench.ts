import { enFirst } from './en-first';
import { bench } from './en/bench';
import { dictated } from './en/dictated';
import { doubtfulReading } from './en/doubtful-reading';
import { ears } from './en/ears';
import { guide } from './en/guide';
import { hands } from './en/hands';
import { judgements } from './en/judgements';
import { keyNames } from './en/key-names';
import { gates, places } from './en/places';
import { problems } from './en/problems';
import { startScreens } from './en/start-screens';
import { stepNames } from './en/step-names';
import { steps } from './en/steps';
import { wrappers } from './en/wrappers';

/** The English of the way to the bench, and of the bench: all that the guide may have to say there, at any time. */
export const enBench = {
  ...enFirst,
  problems,
  screens: startScreens,
  places,
  gates,
  judgements,
  steps,
  stepNames,
  guide,
  hands,
  dictated,
  ears,
  keys: keyNames,
  doubtfulReading,
  wrappers,
  bench,
};
