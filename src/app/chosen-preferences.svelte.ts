import { FIRST_PREFERENCES, type Preferences } from '../domain/preferences';
import type { DeviceProblem } from '../domain/problem';
import { orProblem } from '../workflow/or-problem';

/** Where preferences are kept. What it cannot do it throws as a `ProblemError`. */
export type PreferencesStore = {
  read: () => Promise<Preferences>;
  write: (preferences: Preferences) => Promise<void>;
};

/** What the maker has chosen. A choice counts at once; where it cannot be kept it counts until the app is closed. */
export class ChosenPreferences {
  readonly #store: PreferencesStore;
  #current = $state.raw(FIRST_PREFERENCES);

  constructor(store: PreferencesStore) {
    this.#store = store;
  }

  get current(): Preferences {
    return this.#current;
  }

  recall(): Promise<DeviceProblem | undefined> {
    return orProblem<DeviceProblem | undefined>(
      async () => {
        this.#current = await this.#store.read();
        return undefined;
      },
      (problem) => problem,
    );
  }

  choose(preferences: Preferences): Promise<DeviceProblem | undefined> {
    this.#current = preferences;
    return orProblem<DeviceProblem | undefined>(
      async () => {
        await this.#store.write(preferences);
        return undefined;
      },
      (problem) => problem,
    );
  }
}
