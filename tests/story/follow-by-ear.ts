import { isTyped } from '../../src/guide/touches';
import type { Command } from '../../src/voice/commands';
import { TICK, type Play } from './play';

/** Follows the guide as a careful maker with sound wine would, until there is nothing to do for now. */
export async function followByEar(play: Play): Promise<void> {
  for (let turn = 0; turn < 400; turn += 1) {
    await play.hearsOut();
    if (play.maker.place === 'finished' || !(await answersOnce(play))) return;
  }
}

async function answersOnce(play: Play): Promise<boolean> {
  const { stage, situation } = play.context;
  const act = situation?.now?.act;
  const goesOn = stage === 'timing' || (stage === 'time up' && act?.step === 'sanitiser contact');
  const command = answerTo(play);
  if (goesOn) await until(play, () => play.context.stage !== stage);
  else if (wantsCard(play)) await play.types(play.card());
  else if (command) await play.says(command);
  else return false;
  return true;
}

async function until(play: Play, over: () => boolean): Promise<void> {
  while (!over()) await play.clock.pass(TICK);
}

/** The act wants something typed, or the gate a reading that can count by now. */
function wantsCard({ context: { stage, situation }, clock }: Play): boolean {
  const act = situation?.now?.act;
  if (stage === 'acting' && act) return isTyped(act);
  const verdict = situation?.gate?.verdict;
  if (stage !== 'at a gate' || !verdict || verdict.open) return false;
  return verdict.because.code === 'no-reading-since-baseline' && (verdict.earliest ?? 0) <= clock.now();
}

function answerTo({ context: { stage, situation } }: Play): Command | undefined {
  const kind = situation?.now?.act.kind;
  if (stage === 'warning') return 'ready';
  if (stage === 'reading back') return 'yes';
  if (stage === 'time up') return 'done';
  if (situation?.asks) return situation.asks === 'foam' || situation.asks === 'clear' ? 'yes' : 'no';
  if (stage === 'at a gate') return situation?.gate?.verdict.open ? 'go on' : undefined;
  if (stage !== 'acting') return undefined;
  return kind === 'stir' || kind === 'timer' ? 'start' : 'done';
}
