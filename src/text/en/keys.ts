import type { KeyAction, Unmappable } from '../../domain/key-preferences';
import { keyNames } from './key-names';

const { named } = keyNames;

const actions: Record<KeyAction, string> = {
  main: 'Main pad',
  back: 'One step back',
  again: 'Say it again',
  'how long': 'How many minutes are left',
  'where are we': 'Where was I',
  wait: 'Wait a moment',
  'something went wrong': 'Something went wrong',
  ears: 'Listen to me, or stop',
};

const does: Record<KeyAction, string> = {
  main: 'presses the main pad',
  back: 'goes one step back; where something is asked, it answers no',
  again: 'says it again',
  'how long': 'says how many minutes are left',
  'where are we': 'tells what is done, what is not, and what is in your hand',
  wait: 'makes me wait',
  'something went wrong': 'opens what to do when something went wrong',
  ears: 'turns my ears on and off',
};

const refused: Record<Unmappable, string> = {
  Tab: 'Tab moves from one thing to the next everywhere, and stays that.',
  Escape: 'Escape closes what is open everywhere, and stays that.',
  digit: 'The digits 1 to 9 press the pads in their order, and stay that.',
  modifier: 'That key only works together with others, so it cannot stand alone.',
  browser: 'The browser keeps that key for itself.',
  nameless: 'The browser does not say which key that was, so it could not be known again.',
};

/** A device gives these buttons to whatever it counts as playing, and seldom counts a page that only speaks. */
const earphone =
  'An earphone’s button counts as Play/Pause, or as Next track and Previous track. Many devices pass it on only while the page plays sound, and some never do, so try yours at the bench first.';

/** Keys, pedals and clickers: what they do, in the help and in the settings. */
export const keys = {
  ...keyNames,
  actions,
  does,
  list: (keys: readonly string[]): string => keys.map(named).join(', '),
  none: 'no key yet',
  settings: {
    title: 'Keys, pedal and clicker',
    intro: 'At the bench these keys do the following. A pedal or a clicker counts as a key.',
    ask: 'press a key for this',
    waiting: 'press the key now',
    waits: 'Press the key, the pedal or the clicker now. Escape stops the waiting and changes nothing.',
    stopped: 'I no longer wait for a key. Nothing was changed.',
    taken: (key: string, action: KeyAction) => `Taken: ${named(key)} is now “${actions[action]}”.`,
    takenFrom: (key: string, before: KeyAction, action: KeyAction) =>
      `Taken: ${named(key)} was “${actions[before]}” and is now “${actions[action]}”.`,
    already: (key: string, action: KeyAction) => `${named(key)} is “${actions[action]}” already.`,
    refused: (why: Unmappable) => `${refused[why]} Press another key, or Escape to stop.`,
    together: 'One key at a time: let go of the others, and press it alone. Escape stops the waiting.',
    keyless: (action: KeyAction) =>
      `“${actions[action]}” has no key left. Its pad and its words still work; give it another key here.`,
    reset: 'as at first',
    isReset: 'All keys are as at first.',
    fixed: 'The digits 1 to 9, Escape and Tab keep their work.',
    earphone,
  },
  help: {
    heading: 'Keys, pedals and clickers',
    key: 'Key',
    does: 'What it does',
    intro: 'A pedal or a clicker sends one of these keys. These are yours as they are now;',
    change: 'you can change them in the settings',
    earphone,
    fixed: [
      { keys: '1 to 9', does: 'presses that pad, counted from the first' },
      { keys: 'Escape', does: 'closes what was folded out, and takes back what is asked' },
      { keys: 'Tab', does: 'moves from one thing to the next, everywhere' },
    ],
  },
};
