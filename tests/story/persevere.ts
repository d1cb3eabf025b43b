import { HOUR } from '../../src/domain/calendar';
import type { Gravity } from '../../src/domain/gravity';
import type { Problem } from '../../src/domain/problem';
import type { Celsius } from '../../src/domain/unit';
import { asOf } from '../../src/procedure/facts';
import { judge } from '../../src/procedure/judge';
import { isEnd, isPhase, type Gate } from '../../src/procedure/phase';
import { remediesFor } from '../../src/workflow/remedies';
import type { Maker } from './maker';
import { sealBroken } from './seals';

const MOST_STEPS = 600;

/** Goes on sensibly to the end, whatever the gates ask for: what stopped it, or the seal that it broke; nothing when all is well. */
export function persevere(
  maker: Maker,
  watch: (maker: Maker) => string | undefined = sealBroken,
): string | undefined {
  for (let steps = 0; !isEnd(maker.place); steps += 1) {
    const broken = watch(maker);
    if (broken) return broken;
    if (steps > MOST_STEPS) return `never came to an end, but to ${maker.place}, ${maker.act?.id ?? 'gate'}`;
    const problem = isPhase(maker.place) ? answerOrRead(maker) : passOrWait(maker, maker.place);
    if (problem) return `${maker.place}, ${maker.act?.id ?? 'gate'}: ${JSON.stringify(problem)}`;
  }
  return undefined;
}

/** A reading wants a hydrometer that was checked; a sealed act that was left lying until its proof grew stale, a reading. */
function answerOrRead(maker: Maker): Problem | undefined {
  const problem = maker.answer();
  if (problem?.code === 'hydrometer-not-checked') return maker.report(anotherHydrometer);
  return problem && maker.act?.sealed ? maker.read() : problem;
}

/** What a gate asks for, or its way back, or time and another reading. A baseline that everything later rises above was misread. */
function passOrWait(maker: Maker, gate: Gate): Problem | undefined {
  if (!maker.facts.instrument) return maker.report(anotherHydrometer);
  if (maker.prove(gate) === undefined) return undefined;
  const verdict = judge(gate, maker.sheet, asOf(maker.facts, maker.now));
  const failed = verdict.open ? [] : [verdict.because, ...verdict.also];
  const [remedy] = remediesFor(gate, failed);
  if (remedy) return maker.report({ type: 'sent back', how: 'touch', gate, clause: remedy.clause });
  const { baseline } = maker.facts;
  if (
    baseline !== undefined &&
    failed.some(({ code }) => code === 'reading-rose') &&
    gate === 'proving still'
  )
    return maker.report({ type: 'reading struck', how: 'touch', entry: baseline, reason: 'misread it' });
  const earliest = verdict.open ? maker.now.at : (verdict.earliest ?? maker.now.at);
  maker.wait(Math.max(24, (earliest - maker.now.at) / HOUR));
  return gate === 'proving dry' ? maker.read() : undefined;
}

export const anotherHydrometer = {
  type: 'instrument checked',
  how: 'touch',
  division: 10,
  calibratedAt: 20,
  waterReading: 10_000 as Gravity,
  waterCelsius: 20 as Celsius,
} as const;
