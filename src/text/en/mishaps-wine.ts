import type { Mishap } from '../../procedure/mishap';
import type { withTheWine } from '../../procedure/mishaps/with-the-wine';
import { cautions } from './cautions';
import type { MishapWords } from './mishap-words';

/** How the wine looks and smells when something is wrong, or seems to be. */
export const mishapsWithTheWine: Record<Extract<Mishap, keyof typeof withTheWine>, MishapWords> = {
  'sediment stirred up': {
    title: 'The sediment was stirred up',
    spoken: 'the sediment got stirred up',
    tell: 'The vessel was moved or knocked, or the siphon dipped into the bottom, and it is cloudy again.',
    lost: 'Days. What sank once sinks again, and faster.',
    reversible: 'All of it, as long as it is not in bottles.',
    now: [
      'Stop. Put the vessel down, where it can stay.',
      'Close it and leave it, three days at least.',
      'Do not filter, and do not fine it a second time.',
      'Looks from before do not count: it has to be seen clear on two days again.',
    ],
    again: 'Tomorrow, with a torch behind it.',
    look: 'Hold a torch behind it: is it sinking again?',
    entry: 'What happened: the sediment was stirred up.',
  },
  'rotten eggs': {
    title: 'It smells of rotten eggs',
    spoken: 'it smells of rotten eggs',
    tell: 'Eggs or drains; not the sharp prickle of a match. Stir a sample with a clean copper coin: if the smell goes, it is this.',
    lost: 'Nothing yet. Yeast that is short of food or too warm makes it, and it usually goes off with the gas.',
    reversible: 'Within days, yes. After weeks it can turn into a smell of onions, and that stays.',
    cautions: [cautions.openingVessel],
    now: [
      'While it ferments: keep it in its range, and wait three days.',
      'When it is over: siphon it once with a splash, or stir it briskly, so that the smell leaves with the gas.',
      'Give no copper salts: the dose that helps and the one that poisons lie close together.',
    ],
    again: 'In three days, by smelling a glass, not the vessel.',
    look: 'Smell a glass, not the vessel: is it going away?',
    disagree:
      'Some add yeast food at once, others say that it is too late after half the sugar. The house adds nothing that the sheet does not have.',
    entry: 'What happened: a smell of rotten eggs.',
  },
  geranium: {
    title: 'It smells of geraniums',
    spoken: 'it smells of geraniums',
    tell: 'Crushed geranium leaves, green and sharp. It comes from sorbate that bacteria have eaten.',
    lost: 'The taste, for good. It is not dangerous, and there is no cure.',
    reversible:
      'Nothing in this wine. In the next one: sulphite always goes with sorbate, and everything is clean.',
    now: [
      'Let a second nose smell it: young wine can smell green without being this.',
      'Add nothing, and do not blend it into good wine.',
      'If it is faint, drink it soon. If it is strong, cook with none of it, and end the batch with that reason.',
    ],
    again: 'In a week, by the same nose: it does not fade, other green smells do.',
    look: 'The same nose again: has it faded?',
    entry: 'What happened: a smell of geraniums.',
  },
  'struck match': {
    title: 'It smells of struck matches',
    spoken: 'it smells of matches',
    tell: 'A prickle in the nose, as of a match: sulphite, freshly added. Eggs or drains are something else.',
    lost: 'Nothing. It guards the wine.',
    reversible: 'It binds by itself, within weeks.',
    cautions: [cautions.fumes],
    now: [
      'Wait. Let the glass stand, or pour it from one glass into another.',
      'If the dose was doubled by mistake, tell that a wrong sachet went in, and do not drink it young.',
      'Who reacts to sulphite should not taste it.',
    ],
    again: 'In a week.',
    look: 'Smell a glass: is it fading?',
    entry: 'What happened: a smell of struck matches.',
  },
  browning: {
    title: 'It is turning brown',
    spoken: 'it is turning brown',
    tell: 'Compare with a photograph or a bottle of the same kind, in daylight. A smell of sherry or bruised apple goes with it.',
    lost: 'Freshness. Air did it, and what has browned stays brown.',
    reversible: 'The rest can be kept as it is, if no more air comes to it.',
    now: [
      'Top the vessel up to below its stopper, or move it into a smaller one.',
      'Check airlock, bung and tap for leaks.',
      'Do not stir, and do not splash.',
      'Make sure that the sheet’s sulphite is in, in its turn. Drink this one young.',
    ],
    again: 'In a week, beside the same photograph.',
    look: 'Beside the same photograph: has the colour stayed?',
    entry: 'What happened: it is turning brown.',
  },
  crystals: {
    title: 'There are crystals in it',
    spoken: 'there are crystals',
    tell: 'They lie loose, crunch between two spoons, and dissolve in hot water. Glass does not dissolve.',
    lost: 'Nothing. They are cream of tartar from the grape, thrown by the cold.',
    reversible: 'There is nothing to reverse: pour it off them.',
    cautions: [
      'If a bottle, a rim or a hydrometer broke in this batch, take it for glass: do not taste it, and throw it away.',
    ],
    now: [
      'Put some into hot water and wait. Gone: tartar. Still there: glass, and the bottle goes.',
      'Leave them in the vessel or the bottle, and decant.',
    ],
    again: 'In a week, and with every bottle that you open.',
    look: 'Are they still few, and loose at the bottom?',
    entry: 'What happened: crystals were seen.',
  },
  'film or vinegar': {
    title: 'There is a film, or it smells of vinegar',
    spoken: 'there is a film on it',
    tell: 'A white skin that wrinkles, fur, flies in the airlock, or a smell of vinegar or nail varnish.',
    lost: 'With fur, or a clear smell of vinegar: the wine. With a thin skin alone: perhaps nothing yet.',
    reversible: 'A thin skin can be held back by keeping air away. Vinegar cannot be turned back.',
    cautions: ['Do not taste what has fur or smells of solvent.'],
    now: [
      'Keep this vessel and its tools apart from every other.',
      'A thin skin and a clean smell: siphon the wine from under it into a sanitised, full vessel.',
      'Vinegar or nail varnish: it is advised to end the batch as discarded. One vinegary vessel spoils the next.',
      'Wash and sanitise everything that touched it; throw away hoses and grommets.',
    ],
    again: 'Tomorrow: has the skin come back?',
    look: 'Is the surface clean, with no new skin on it?',
    entry: 'What happened: a film, or a smell of vinegar.',
  },
};
