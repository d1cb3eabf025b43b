import type { Mishap } from '../../procedure/mishap';
import type { withBottles } from '../../procedure/mishaps/with-bottles';
import { cautions } from './cautions';
import type { MishapWords } from './mishap-words';

const DO_NOT_MOVE =
  'Bottles under pressure can burst while you look at them. Throw a thick towel over them, protect eyes and hands, keep others out, and do not move them while they are warm.';

/** Bottles, gone wrong. Someone can be hurt: the caution comes first. */
export const mishapsWithBottles: Record<Extract<Mishap, keyof typeof withBottles>, MishapWords> = {
  'gas in bottles': {
    title: 'There is gas in the bottles',
    spoken: 'there is gas in the bottles',
    tell: 'It hisses on opening, prickles, or foams in the glass. Gas that was never stirred out stays as it is; a ferment that goes on gets stronger from week to week.',
    lost: 'Perhaps nothing. If it is fermenting, the bottles as they are.',
    reversible: 'The wine: it can be poured back into a vessel, finish there, and be bottled again.',
    cautions: [DO_NOT_MOVE],
    now: [
      'Make the room cool, and wait for a day until the bottles are cold.',
      'Open one over a sink, with a towel round its neck. Read its gravity, with the gas shaken out.',
      'As on bottling day: it is old gas. Keep the bottles cool, and pour the wine from jug to jug before drinking.',
      'Lower than on bottling day: it is fermenting. Open them all, cold, and pour them back; then tell that.',
    ],
    again: 'Every day, before you touch anything: have closures risen?',
    look: 'With your eyes only, before you touch anything: do all closures sit as they did?',
    disagree:
      'Whether wine that ferments again in its bottles is given both stabilisers a second time, or finishes first: the house lets it finish, and never gives sorbate twice.',
    entry: 'What happened: gas in the bottles.',
  },
  'closures rising': {
    title: 'Corks or caps are rising',
    spoken: 'the corks are rising',
    tell: 'A cork stands above the rim, a cap is domed, or a neck is wet.',
    lost: 'Those closures. The wine, only if nothing is done.',
    reversible:
      'If it is pressure, the wine can be poured back. If it was a bottle filled too full, one cork is put right.',
    cautions: [
      DO_NOT_MOVE,
      'Screw caps and crown caps hold until the glass gives way: take those for the most dangerous.',
    ],
    now: [
      'Cool the room first. Leave them standing, contained in a box or a tub with a lid.',
      'The next day, cold: open one over a sink, with a towel round it.',
      'It fizzes: open all of them, cold, and pour them back into a vessel under an airlock; then tell that.',
      'It does not: the cork was pushed by warmth or by too full a bottle. Draw off a little, and close it anew.',
    ],
    again: 'Every day, with your eyes only.',
    look: 'With your eyes only: do all closures sit flat, and is every neck dry?',
    entry: 'What happened: closures are rising.',
  },
  'bottle broke': {
    title: 'A bottle broke',
    spoken: 'a bottle broke',
    tell: 'In the corker, on the floor, or by itself on the shelf. By itself means pressure: look at the others from a distance.',
    lost: 'That bottle and its wine.',
    reversible: 'Everything else, if no splinter fell into it.',
    cautions: [
      'Broken glass goes through a hand. Let go of it, step back, and look at your hands before anything else; a deep cut needs a doctor.',
      cautions.chippedGlass,
      'If it burst by itself, the next one can too. Leave the room until it is cool, and come back with eye protection.',
    ],
    now: [
      'Throw away its wine, and whatever stood open beside it.',
      'Sweep wet, with gloves. Check corker, filler and hose for splinters, and rinse them.',
      'Look at every rim that is still to come. Never force the lever.',
      'If it broke over the open vessel, take the wine in it for wine with glass in it.',
    ],
    again: 'In an hour: is every splinter found?',
    look: 'Is every splinter found?',
    entry: 'What happened: a bottle broke, and its wine was thrown away.',
  },
  'poured back': {
    title: 'The bottles were poured back',
    spoken: 'I poured the bottles back',
    tell: 'The wine stands in a vessel again, under an airlock.',
    lost: 'Some freshness, and the closures.',
    reversible: 'The bottling: it comes again, when the wine is shown to be still.',
    cautions: [DO_NOT_MOVE],
    now: [
      'Sanitised vessel, filled gently down its wall, airlock on.',
      'Throw away wine from any bottle with a chipped rim.',
      'Keep it warm, and read it. The last gate is asked again, with readings and tests from now on.',
      'If it has fallen since its baseline, it goes on to ferment; else it comes back to bottling.',
      'Add nothing: stabiliser that is in stays in, and is not given twice.',
    ],
    again: 'Tomorrow: foam, airlock, and a first reading.',
    look: 'Does it stand under an airlock, and is a first reading taken?',
    entry: 'What happened: the bottles were poured back into a vessel.',
  },
};
