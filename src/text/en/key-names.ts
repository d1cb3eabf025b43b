/** Keys as they are written on keyboards, pedals and clickers. */
const names: Readonly<Record<string, string>> = {
  ' ': 'space',
  Enter: 'Enter',
  PageDown: 'Page Down',
  PageUp: 'Page Up',
  MediaPlayPause: 'Play/Pause',
  MediaPlay: 'Play',
  MediaPause: 'Pause',
  MediaStop: 'Stop',
  MediaTrackNext: 'Next track',
  MediaTrackPrevious: 'Previous track',
  AudioVolumeUp: 'Volume up',
  AudioVolumeDown: 'Volume down',
  ArrowUp: 'Up arrow',
  ArrowDown: 'Down arrow',
  ArrowLeft: 'Left arrow',
  ArrowRight: 'Right arrow',
};

/** A name of the browser's own, such as "LaunchMail", with its words apart; a letter as it is printed. */
const spelledOut = (key: string): string =>
  key.length === 1 ? key.toUpperCase() : key.replaceAll(/(?<=[a-z])(?=[A-Z])/g, ' ');
const named = (key: string): string => names[key] ?? spelledOut(key);

/** What a pad says of its key. */
export const keyNames = { named };
