import { enBench } from './en-bench';
import { away } from './en/away';
import { benchLater } from './en/bench-later';
import { cautions } from './en/cautions';
import { coach } from './en/coach';
import { consequence } from './en/consequence';
import { digest } from './en/digest';
import { doubt } from './en/doubt';
import { drawing } from './en/drawing';
import { override } from './en/override';
import { keys } from './en/keys';
import { ladder, pace, paceTitles, rungs } from './en/pace';
import { school } from './en/school';
import { screens } from './en/screens';
import { sources } from './en/sources';
import { labels } from './en/labels';
import { sums } from './en/sums';
import { tonight } from './en/tonight';
import { whatHappened } from './en/what-happened';

/** All English: the first language, and the shape of all others. */
export const en = {
  ...enBench,
  bench: { ...enBench.bench, ...benchLater },
  screens,
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
  keys,
  away,
  sources,
  school,
  sums,
  labels,
  whatHappened,
  digest,
  drawing,
};
