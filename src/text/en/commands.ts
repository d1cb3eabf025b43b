import type { Command } from '../../voice/commands';

/** What to say or press for each command; the first is the one that a pad shows. Long ones are heard best. */
export const commands: Record<Command, readonly string[]> = {
  done: ['that is done', 'I have finished'],
  ready: ['ready to continue', 'I am ready'],
  again: ['once more please', 'say that again', 'say it again'],
  back: ['one step back', 'go back one'],
  wait: ['wait a moment', 'give me a moment'],
  'go on': ['go on now', 'on with it'],
  'how long': ['how many minutes', 'how much longer', 'how much time is left'],
  start: ['start the clock', 'begin the countdown'],
  finish: ['finish stirring', 'end the stirring'],
  'one more minute': ['one more minute', 'add another minute'],
  'new reading': ['new reading', 'take a reading'],
  'write down': ['write this down', 'take it down please'],
  yes: ['yes it is', 'yes that is so'],
  no: ['no it is not', 'no it isn’t'],
  wrong: ['that is wrong', 'take that back'],
  why: ['why is that', 'what is the reason'],
  'where are we': ['where was I', 'what step are we on', 'someone interrupted me'],
  'what can I say': ['what can I say', 'list the words'],
  'something went wrong': ['something went wrong', 'we have a problem'],
  'stop listening': ['stop listening now', 'listen no longer'],
};
