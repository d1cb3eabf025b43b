/** One of the device's voices. */
export type Voice = { id: string; name: string; language: string; local: boolean };

export type Utterance = {
  words: string;
  language: string;
  voice: string | undefined;
  /** 1 is the voice's own pace. */
  rate: number;
  /** 0 to 1. */
  volume: number;
};

export type Told = { started: () => void; ended: () => void; failed: () => void };

/** What a device has to speak with. It may have no voice, find one late, or hang: `utter.ts` expects all of that. */
export type Engine = {
  voices: () => readonly Voice[];
  speak: (utterance: Utterance, told: Told) => void;
  cancel: () => void;
};

/** Does something later, and gives back how to call it off. */
export type After = (milliseconds: number, then: () => void) => () => void;
