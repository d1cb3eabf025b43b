/** How the maker wants to be spoken to. */
export type SoundPreferences = {
  muted: boolean;
  /** Within `RATES`; 1 is the voice's own pace. */
  rate: number;
  /** Within `LOUDNESSES`, for speech and tones alike; 1 is as loud as the device. */
  volume: number;
  /** The chosen voice's id; the device's own choice for the language where it is left out. */
  voice?: string;
};

/** Sound as it is on the first day. */
export const FIRST_SOUND_PREFERENCES: SoundPreferences = { muted: false, rate: 1, volume: 1 };

/** The paces that can still be followed by ear. From experience, not measured. */
export const RATES = { least: 0.5, most: 2 };

/** Silence is none of them: that is what muting is for. */
export const LOUDNESSES = { least: 0.1, most: 1 };
