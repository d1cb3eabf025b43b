import { mount } from 'svelte';
import { exclusively } from '../storage/exclusively.browser';
import { idbDatabase } from '../storage/idb-database.browser';
import { keepStorage } from '../storage/keep-storage.browser';
import { MirroredJournalStore } from '../storage/mirrored-journal-store';
import { newId } from '../storage/new-id.browser';
import { otherTabs } from '../storage/other-tabs.browser';
import { SettingsStore } from '../storage/settings-store';
import { Live } from '../ui/live.svelte';
import '../ui/styles/base.css';
import '../ui/shell/print.css';
import { orProblem } from '../workflow/or-problem';
import App from './App.svelte';
import { ChosenPreferences } from './chosen-preferences.svelte';
import { wallClock } from './clock.browser';
import { files } from './file.browser';
import { location } from './location.browser';
import { page } from './page.browser';
import type { Ports } from './ports';
import { Trouble } from './trouble.svelte';

const target = document.getElementById('app');
if (!target) throw new Error('index.html has no #app');

const trouble = new Trouble();
page.onFault(() => trouble.tell('unforeseen'));

const settings = idbDatabase('fallbright-settings');
const preferences = new ChosenPreferences(new SettingsStore(settings));
const store = new MirroredJournalStore(idbDatabase('fallbright'), idbDatabase('fallbright-copy'), (problem) =>
  trouble.tell(problem),
);

const outside: Ports = {
  clock: new Live(wallClock.now, wallClock.subscribe),
  address: new Live(location.read, location.subscribe),
  go: location.go,
  files,
  batches: { store, clock: wallClock.now, exclusively, otherTabs: otherTabs(), newId },
  preferences,
  storage: {
    isPromised: page.isStoragePromised,
    askToKeep: () =>
      orProblem(
        () => keepStorage(settings).then(() => undefined),
        () => undefined,
      ),
  },
  print: page.print,
};

// The chosen look is known before anything is drawn, so that a dark cellar is not lit up by a pale page.
const problem = await preferences.recall();
if (problem) trouble.tell(problem);
mount(App, { target, props: { outside, trouble } });
