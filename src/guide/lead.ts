import { createActor, type ActorRefFrom } from 'xstate';
import type { Problem } from '../domain/problem';
import type { Instant } from '../domain/unit';
import type { Ticker } from '../timers/alarms';
import type { Mishap } from '../procedure/mishap';
import type { Command } from '../voice/commands';
import type { Ears } from '../voice/ear/ears';
import type { Speaker } from '../voice/speaker';
import type { Tones } from '../voice/tones';
import type { Card, GuideReport, How } from './guide-events';
import { guideMachine } from './guide-machine';
import type { Words } from './guide-text';
import { listen } from './listen';
import type { Situation } from './situation';

/** What the guide needs of the world, handed in by `app/`. */
export type GuidePorts = {
  speaker: Speaker;
  tones: Tones;
  ticker: Ticker;
  /** What hears the maker, where anything does. */
  ears?: Ears;
  now: () => Instant;
  /** Takes a report to the batch; the reason when it is not taken. */
  report: (report: GuideReport) => Promise<Problem | undefined>;
  /** Opens a card; what went wrong may be known already. */
  show: (card: Card, mishap?: Mishap) => void;
  /** Turns the ears off. */
  deafen: () => void;
};

/** A guide at work: what it is told, and how it is stopped. What it waits for and offers is in the actor's context. */
export type Lead = {
  actor: ActorRefFrom<typeof guideMachine>;
  tell: (situation: Situation) => void;
  hear: (command: Command, how: How) => void;
  draft: (report: GuideReport) => void;
  stop: () => void;
};

/** Puts a guide to work: its lines to the speaker, its reports to the batch, the ticks to it. */
export function lead(words: Words, ports: GuidePorts): Lead {
  const { speaker, tones, ticker, now } = ports;
  const actor = createActor(guideMachine, { input: { words, at: now() } });
  actor.on('say', ({ utterance, lines }) => {
    speaker.hush();
    void Promise.all(lines.map((line) => speaker.say(line))).then(() =>
      actor.send({ type: 'said', utterance, at: now() }),
    );
  });
  actor.on('tone', ({ tone }) => tones.play(tone));
  actor.on('show', ({ card, mishap }) => ports.show(card, mishap));
  actor.on('deafen', () => ports.deafen());
  actor.on('report', ({ report }) => {
    void ports.report(report).then((problem) => {
      if (problem) actor.send({ type: 'refused', problem, at: now() });
    });
  });
  actor.start();
  const unlisten = ports.ears && listen(actor, ports.ears, now);
  const untick = ticker.subscribe(() => actor.send({ type: 'tick', at: now() }));
  return {
    actor,
    tell: (situation) => actor.send({ type: 'situation', situation, at: now() }),
    hear: (type, how) => actor.send({ type, how, at: now() }),
    draft: (report) => actor.send({ type: 'draft', report, at: now() }),
    stop() {
      untick();
      unlisten?.();
      speaker.hush();
      actor.stop();
    },
  };
}
