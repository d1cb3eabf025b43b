import { mount } from 'svelte';
import { exclusively } from '../storage/exclusively.browser';
import { idbDatabase } from '../storage/idb-database.browser';
import { keepStorage } from '../storage/keep-storage.browser';
import { MirroredJournalStore } from '../storage/mirrored-journal-store';
import { newId } from '../storage/new-id.browser';
import { otherTabs } from '../storage/other-tabs.browser';
import { SettingsStore } from '../storage/settings-store';
import { enFirst } from '../text/en-first';
import { pageClock } from '../timers/page-clock';
import { clockDevice } from '../timers/page-clock.browser';
import { Later } from '../ui/later.svelte';
import { Live } from '../ui/live.svelte';
import '../ui/styles/base.css';
import '../ui/shell/print.css';
import { orProblem } from '../workflow/or-problem';
import App from './App.svelte';
import { chance } from './chance.browser';
import { ChosenPreferences } from './chosen-preferences.svelte';
import { copy } from './clipboard.browser';
import { wallClock } from './clock.browser';
import { files } from './file.browser';
import { location } from './location.browser';
import { page } from './page.browser';
import type { LeadByEar, Ports } from './ports';
import { routeOf } from './routes';
import { soundCheck } from './sound-check.browser';
import { benchText, wholeText } from './texts';
import { Trouble } from './trouble.svelte';
import { followUpdates } from './updates.browser';
import { VersionNews } from './version-news.svelte';
import VersionNotice from './VersionNotice.svelte';

const target = document.getElementById('app');
if (!target) throw new Error('index.html has no #app');

const trouble = new Trouble();
page.onFault(() => trouble.tell('unforeseen'));

const now = pageClock(clockDevice(), () => undefined);
const wall = wallClock(now);
const settings = idbDatabase('fallbright-settings');
const preferences = new ChosenPreferences(new SettingsStore(settings));
const store = new MirroredJournalStore(
  idbDatabase('fallbright'),
  idbDatabase('fallbright-copy'),
  (problem) => trouble.tell(problem),
  page.onceShown,
);

const leading = new Later<LeadByEar>(async () => {
  const [{ handsFreeOf }, text] = await Promise.all([import('./hands-free.browser'), benchText()]);
  return handsFreeOf(text, now, preferences);
});

const restOfBench = new Later(async () => {
  const [{ laterParts }, text] = await Promise.all([import('../ui/bench/later-parts'), wholeText()]);
  return { parts: laterParts, text };
});

const outside: Ports = {
  clock: new Live(wall.now, wall.subscribe),
  address: new Live(location.read, location.subscribe),
  go: location.go,
  files,
  batches: { store, clock: wall.now, exclusively, otherTabs: otherTabs(), newId },
  preferences,
  leading: leading.bring,
  restOfBench,
  onceShown: page.onceShown,
  soundCheck: soundCheck(enFirst.language, () => preferences.current.sound),
  browserHears: () =>
    import('../voice/ear/browser-ears.browser').then(({ browserHears }) => browserHears(enFirst.language)),
  storage: {
    isPromised: page.isStoragePromised,
    askToKeep: () =>
      orProblem(
        () => keepStorage(settings).then(() => undefined),
        () => undefined,
      ),
  },
  print: page.print,
  chance,
  show: page.show,
  copy,
};

// The chosen look is known before anything is drawn, so that a dark cellar is not lit up by a pale page.
const problem = await preferences.recall();
if (problem) trouble.tell(problem);
const news = new VersionNews();
mount(VersionNotice, { target, props: { news, text: enFirst } });
mount(App, { target, props: { outside, trouble } });

/** Vite's dev server makes every file afresh: there is nothing to keep. */
function keepUpToDate(): void {
  if (import.meta.env.PROD)
    void followUpdates({
      isAtRest: () => routeOf(location.read()).screen === 'opening',
      subscribe: location.subscribe,
      tell: (version) => news.tell(version),
    });
}

// Words are read in the device's letters first: on a slow network ours would hold them up, and move what is being read.
// They come with the first touch; where they are kept, at once.
const isKept = page.isKept();
const letters = () => void import('../ui/styles/fonts.css').catch(() => undefined);
if (isKept) letters();
else page.atFirstTouch(letters);

// The bench is fetched once the first screen stands, so that nobody waits for it there; the same goes for what is kept
// for use without a network. Where that is kept already, a new version is looked for at once.
if (isKept) keepUpToDate();
page.whenIdle(() => {
  if (!isKept) keepUpToDate();
  void Promise.allSettled([leading.bring(), import('./BatchRoute.svelte')]);
});
