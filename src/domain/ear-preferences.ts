/** Who listens: our own ears, the browser's own where it promises to keep what is said on the device, or nobody. */
export const EARS = ['built-in', 'browser', 'none'] as const;
export type WhoListens = (typeof EARS)[number];

/** How the maker wants to be listened to. */
export type EarPreferences = {
  who: WhoListens;
  /** Whether they were on when the bench was left. Nothing listens that was not turned on once. */
  on: boolean;
};

export const FIRST_EAR_PREFERENCES: EarPreferences = { who: 'built-in', on: false };
