import fc from 'fast-check';
import type { Celsius, Instant, Litres } from '../../src/domain/unit';
import type { GuideContext } from '../../src/guide/guide-context';
import type { GuideEvent, GuideReport } from '../../src/guide/guide-events';
import { offered } from '../../src/guide/offered';
import { MISHAP_IDS, type Mishap } from '../../src/procedure/mishap';
import { COMMANDS, type Command } from '../../src/voice/commands';
import type { Maker } from './maker';

/** What may come at the guide: commands on offer or not, lines that get out or do not, cards, ticks, and time. */
export type Blow =
  | { blow: 'any command'; command: Command; how: 'voice' | 'touch' }
  | { blow: 'offered command'; nth: number }
  | { blow: 'ears'; listening: boolean }
  | { blow: 'number'; value: number }
  | { blow: 'unsure'; command: Command }
  | { blow: 'mishap heard'; mishap: Mishap }
  | { blow: 'said' | 'tick' }
  | { blow: 'wait'; seconds: number }
  | { blow: 'draft'; type: 'act done' | 'temperature taken' | 'litres measured' };

export const anyBlow: fc.Arbitrary<Blow> = fc.oneof(
  {
    weight: 2,
    arbitrary: fc.record({
      blow: fc.constant('any command' as const),
      command: fc.constantFrom(...COMMANDS),
      how: fc.constantFrom('voice' as const, 'touch' as const),
    }),
  },
  {
    weight: 6,
    arbitrary: fc.record({
      blow: fc.constant('offered command' as const),
      nth: fc.constantFrom(0, 0, 0, 0, 1, 3),
    }),
  },
  {
    weight: 4,
    arbitrary: fc.record({ blow: fc.constantFrom('said' as const, 'said' as const, 'tick' as const) }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      blow: fc.constant('ears' as const),
      listening: fc.constantFrom(true, true, false),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      blow: fc.constant('number' as const),
      value: fc.constantFrom(0, 0.994, 1, 1.05, 21, 30, 500),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({ blow: fc.constant('unsure' as const), command: fc.constantFrom(...COMMANDS) }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      blow: fc.constant('any command' as const),
      command: fc.constant('something went wrong' as const),
      how: fc.constant('voice' as const),
    }),
  },
  {
    weight: 2,
    arbitrary: fc.record({
      blow: fc.constant('mishap heard' as const),
      mishap: fc.constantFrom(...MISHAP_IDS),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({ blow: fc.constant('wait' as const), seconds: fc.constantFrom(1, 9, 40, 300) }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      blow: fc.constant('draft' as const),
      type: fc.constantFrom('act done' as const, 'temperature taken' as const, 'litres measured' as const),
    }),
  },
);

/** A blow as it reaches the guide; time goes by with it. */
export function eventOf(blow: Blow, maker: Maker, context: GuideContext): GuideEvent {
  const seconds = blow.blow === 'wait' ? blow.seconds : 0.25;
  maker.now = { ...maker.now, at: (maker.now.at + seconds * 1000) as Instant };
  const { at } = maker.now;
  if (blow.blow === 'any command') return { type: blow.command, how: blow.how, at };
  if (blow.blow === 'offered command') return { type: offered(context)[blow.nth] ?? 'again', how: 'key', at };
  if (blow.blow === 'said') return { type: 'said', utterance: context.utterance, at };
  if (blow.blow === 'ears') return { type: 'ears', listening: blow.listening, at };
  if (blow.blow === 'number') return { type: 'number', value: blow.value, at };
  if (blow.blow === 'unsure') return { type: 'unsure', command: blow.command, at };
  if (blow.blow === 'mishap heard') return { type: 'mishap heard', mishap: blow.mishap, at };
  if (blow.blow !== 'draft') return { type: 'tick', at };
  const answer = { act: maker.act?.id ?? 'none', celsius: 21 as Celsius, litres: 20 as Litres };
  return { type: 'draft', report: { type: blow.type, how: 'touch', ...answer } as GuideReport, at };
}
