import { ALWAYS, offered, offeredSoon } from '../../guide/offered';
import type { BenchText } from '../../text/text';
import type { Command } from '../../voice/commands';
import type { HandsFree } from './hands-free';
import type { Offer } from './offer';

/** The rarer pads. While a clock runs, its halt is wanted sooner than its reasons; a wait shows its own day. */
function foldOf(command: Command, { stage }: HandsFree['context']): Offer['folded'] {
  const isTiming = stage === 'timing';
  if (command === 'where are we' || command === 'stop listening') return 'always';
  if (command === 'how long' && stage === 'not due') return 'always';
  if (command === 'back') return stage === 'looking back' ? undefined : 'always';
  if (command === 'wait') return isTiming ? undefined : 'where narrow';
  return command === 'why' ? (isTiming ? 'always' : 'where narrow') : undefined;
}

/** Both answers weigh the same, and a question is no act: none of them is the larger pad. */
const SMALL: ReadonlySet<Command> = new Set<Command>(['yes', 'no', 'how long']);
const AT_ANY_TIME: ReadonlySet<Command> = new Set<Command>([...ALWAYS, 'stop listening']);

type Heard = (command: Command, how: 'touch' | 'key') => void;

/** What the guide offers, as pads in its order. What comes when it has spoken is shown before, and held until then. */
export function guideOffers({ context }: HandsFree, { guide }: BenchText, hear: Heard): Offer[] {
  const now = offered(context);
  return offeredSoon(context).map((command, index) => ({
    phrase: guide.commands[command][0] ?? command,
    command,
    // While nothing is due, nothing is asked for either.
    main: index === 0 && !SMALL.has(command) && !AT_ANY_TIME.has(command) && context.stage !== 'not due',
    disabled: !now.includes(command),
    folded: foldOf(command, context),
    onpress: (how) => hear(command, how),
  }));
}

/** The offers that belong to what is asked now, and those that stand at any time. */
export const isAlways = ({ command }: Offer): boolean => command !== undefined && AT_ANY_TIME.has(command);
