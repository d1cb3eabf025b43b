/** How the maker wants to be spoken to. */
export type SoundPreferences = {
  muted: boolean;
  /** 0.5 to 2; 1 is the voice's own pace. */
  rate: number;
  /** 0 to 1, for speech and tones alike. */
  volume: number;
  /** The chosen voice's id; the device's own choice for the language where it is left out. */
  voice?: string;
};

export const FIRST_SOUND_PREFERENCES: SoundPreferences = { muted: false, rate: 1, volume: 1 };
