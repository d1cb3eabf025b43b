import { enqueueActions, setup } from 'xstate';
import type { Instant } from '../domain/unit';
import { dated, type Effect } from './guide-actions';
import type { GuideContext } from './guide-context';
import type { GuideCommand, GuideEvent, GuideOut } from './guide-events';
import type { Words } from './guide-text';
import { offered } from './offered';

type Doing = { effect: (context: GuideContext, event: never) => Effect };
type Asking = { so: (context: GuideContext, event: never) => boolean };

/** The guide's types, and its one guard and one action: each is given a pure function, and is dated by its event. */
export const guide = setup({
  types: {
    input: {} as { words: Words; at: Instant },
    context: {} as GuideContext,
    events: {} as GuideEvent,
    emitted: {} as GuideOut,
  },
  guards: {
    is: ({ context, event }, { so }: Asking) => so(dated(context, event), event as never),
  },
  actions: {
    does: enqueueActions(({ context, event, enqueue }, { effect }: Doing) => {
      const next = effect(dated(context, event), event as never);
      enqueue.assign(next.context);
      for (const out of next.out)
        if (out.type === 'meant') enqueue.raise(out.command);
        else enqueue.emit(out);
    }),
  },
});

/** An action, as a pure function of what the guide has in mind. */
export const does = (effect: Doing['effect']) => ({ type: 'does', params: { effect } }) as const;
/** A guard, as a pure question. */
export const when = (so: Asking['so']) => ({ type: 'is', params: { so } }) as const;

/** Only what is on offer is heard. */
export const onOffer = (context: GuideContext, { type }: GuideCommand): boolean =>
  offered(context).includes(type);
export const offeredAnd = (so: (context: GuideContext, event: GuideCommand) => boolean) =>
  when((context, event: GuideCommand) => onOffer(context, event) && so(context, event));
