import type { EarProblem, EarState } from '../../voice/ear/ears';

const states: Record<EarState, string> = {
  off: 'not listening',
  asking: 'asks for the microphone',
  fetching: 'fetching my ears',
  starting: 'getting ready',
  listening: 'listening',
  shut: 'ears shut: I speak',
  failed: 'cannot hear',
};

/** Why nothing is heard, and what to do. The pads and keys go on in any case. */
const problems: Record<EarProblem, string> = {
  'no microphone':
    'This device has no microphone that can be used. Plug one in and try again; pads and keys go on.',
  'not allowed':
    'The microphone is not allowed here. Allow it in the browser’s settings for this page and try again; pads and keys go on.',
  'microphone in use': 'Another app holds the microphone. Close that app and try again; pads and keys go on.',
  'microphone lost': 'The microphone went away. Connect it and try again; pads and keys go on.',
  'fetch broken':
    'What hearing takes did not come whole. Try again where there is a network; pads and keys go on.',
  'not supported': 'This browser cannot listen on its own. Use the pads and keys, or another browser.',
  'engine broken':
    'My ears failed twice. Try again, or reload the page; nothing is lost, and pads and keys go on.',
  'not a grammar': 'My ears do not know a word that is asked here. Use the pads and keys.',
};

/** What the guide says of its own ears, and what a screen shows of them. */
export const ears = {
  didYouSay: (phrase: string) => `Did you say: ${phrase}?`,
  noise: 'It is too loud here for me to hear well. Use the pads or the keys.',
  misses: 'I do not catch what you say. Use the pads or the keys.',
  off: 'I have stopped listening. The pads and keys go on.',
  padOrKey: 'That changes what is known to be in the wine. Confirm it with a pad or a key.',
  onScreen: (title: string) => `${title}. It is on the screen: confirm it there with a pad or a key.`,
  sayWhat: 'You can also say what happened, in a short sentence.',
  states,
  problems,
  loud: 'too loud here',
  turnOn: 'listen to me',
  turnOff: 'stop listening',
  tryAgain: 'try to listen again',
  fetched: (percent: string) => `${percent} per cent fetched`,
  meter: (level: string, noise: string) => `Loudness ${level} of 4, noise ${noise} of 4`,
  invitation: {
    title: 'Shall I listen?',
    says: [
      'What you say is heard on this device alone. It is not kept, and it is sent to nobody.',
      'Once, about 4.4 megabytes have to be fetched. After that it works without a network.',
      'What stands on the pads can be said. What cannot be undone is still asked back, and counts only after a yes.',
    ],
    yes: 'listen to me',
    no: 'not now',
  },
  settings: {
    title: 'Listening',
    who: 'Who listens to you',
    whos: {
      'built-in': 'my own ears, on this device',
      browser: 'the browser’s ears, on this device',
      none: 'nobody',
    },
    says: {
      'built-in':
        'About 4.4 megabytes are fetched once. What you say stays on this device and is not kept. It is turned on at the bench.',
      browser:
        'Only where the browser promises to understand on this device. What it does with the sound is the browser’s to say.',
      none: 'No microphone is ever asked for. Pads and keys do everything.',
    },
    absent: 'This browser does not promise to understand on this device, so its ears are not used.',
  },
};
