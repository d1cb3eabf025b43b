import type { Mishap } from '../../procedure/mishap';
import { cautions } from './cautions';
import type { MishapWords } from './mishap-words';

const NO_MORE_STABILISER = 'Add no more stabiliser of any kind: one dose is all that a batch gets.';

/** Sachets that went in out of turn. */
export const mishapsWithSachetsIn = {
  'wrong sachet': {
    title: 'The wrong sachet went in',
    spoken: 'the wrong sachet went in',
    tell: 'The empty wrapper says so. Read the name that is printed on it, not its number.',
    lost: 'That sachet: what is dissolved stays in. Its turn is over, and the guide does not ask for it again.',
    reversible:
      'Nothing comes out again, though most sachets do little harm out of turn. Stabiliser is the one that matters: it slows the yeast, and does not stop it.',
    now: [
      'Put every sachet that is still full out of reach, and lay the empty wrapper beside the vessel.',
      'Choose below which one it was. The rest of the work is planned anew from that.',
      'If it was stabiliser, and the yeast was still to come: keep the juice at the warm end of its range and add the yeast as a starter that foams, never dry.',
      'Add nothing to make up for it.',
    ],
    again: 'Look for foam tomorrow; with stabiliser in, allow three days before you call it slow.',
    look: 'Foam while it ferments, a calm surface after that: is it so?',
    disagree:
      'Some say that juice with sorbate in it is lost; others have seen a strong, foaming starter take hold after some days. The house tries the starter: it costs one sachet of yeast.',
    entry: 'What happened: the wrong sachet went in.',
  },
  'stabiliser too early': {
    title: 'Stabiliser went in before fermentation was over',
    spoken: 'the stabiliser went in too early',
    tell: 'The wrapper of sulphite or sorbate is empty, and the readings have not shown the wine to be dry.',
    lost: 'That dose. Sulphite binds to what a working yeast gives off, and little of it guards the wine afterwards; sorbate is in, and is never given twice.',
    reversible:
      'The wine itself. Yeast that is at work is slowed, not stopped: kept warm, it finishes. Whatever else the sheet has is still given in its turn.',
    cautions: [
      'Powder in fermenting wine can foam up for minutes. Stand back, and keep your face away from the opening.',
      cautions.fumes,
    ],
    now: [
      NO_MORE_STABILISER,
      'Close it under its airlock, at the warm end of its range, by night too.',
      'Prove dryness by readings exactly as before. The calendar helps less now: expect it to be slow.',
      'If the other sachet of the pair is still full, keep it. It goes in only after the proof.',
    ],
    again:
      'Read tomorrow, and then every two or three days. No fall in three warm days means stuck: take the help that is shown then.',
    look: 'Take a reading: has the gravity gone on falling?',
    disagree:
      'Whether a wine that ferments again should get both stabilisers a second time: one hobby page says so, while the theory is to let it finish and to stabilise once. The house never gives sorbate twice. For sulphite, ask a shop for a free-sulphite test before bottling.',
    entry: 'What happened: a stabiliser went in before dryness was proven.',
  },
  'sweetening too early': {
    title: 'The sweetening pack went in too early',
    spoken: 'the sweetening pack went in too early',
    tell: 'The pack is empty, and the wine has not been proven dry with every stabiliser in it.',
    lost: 'The sweetness. The yeast eats it, and the wine becomes stronger and drier than the sheet means it to be.',
    reversible:
      'The wine is sound, once the new sugar has fermented too. It can be sweetened later, from another source, behind every stabiliser.',
    cautions: [cautions.carbonDioxide],
    now: [
      'Stir it in well, bottom to top, so that it does not lie there as a syrup.',
      'Leave room for foam, under an airlock: fermentation may rise again within a day.',
      'Read the gravity today. Readings from before the pack say nothing any more.',
      'Add no stabiliser to save the sweetness. It cannot.',
    ],
    again: 'Look at the foam tomorrow. Dryness is proven anew, with readings from after the pack.',
    look: 'Is there room above the foam, and does the airlock work?',
    entry: 'What happened: the sweetening pack went in before its turn.',
  },
  'one of a pair': {
    title: 'Only one of a pair of stabilisers is in',
    spoken: 'only one of the pair went in',
    tell: 'Of sulphite and sorbate one wrapper is empty and one is still full, though their turn has come.',
    lost: 'Nothing yet. Sorbate alone is the risk: bacteria turn it into a smell of geranium leaves, and that stays for good.',
    reversible:
      'All of it, while nothing smells. The missing one goes in after dryness is proven, and then the pair is whole.',
    cautions: [cautions.fumes],
    now: [
      'Choose below the one that is still full.',
      'Add nothing sweet until both are in.',
      'Keep the vessel full and closed. The guide leads you back to the proof of dryness, and then to the missing sachet.',
      'If it is lost, get the same, or leave out both from now on and do not sweeten.',
    ],
    again: 'Tomorrow: it should be in within days, not weeks.',
    look: 'Is the missing one in, or at hand for its turn?',
    disagree:
      'Some makers leave sorbate out of a dry wine altogether, for fear of that smell; others always add it. The house follows the sheet, and never lets sorbate stand without sulphite.',
    entry: 'What happened: only one of a pair of stabilisers went in.',
  },
  'finings reversed': {
    title: 'The finings went in the wrong way round',
    spoken: 'I reversed the finings',
    tell: 'The second wrapper was emptied before the first.',
    lost: 'Perhaps some clarity. Two-part finings work as a pair of opposites, and the order decides how well they meet.',
    reversible: 'Nearly all of it. Many such wines clear all the same, only later.',
    now: [
      'If one is still full, give it now, stir it gently, and keep its time.',
      'Leave it closed and still for three days.',
      'If it has not begun to clear by then, siphon the wine off its sediment and get a fresh pair of finings.',
      'Do not give half-doses by eye.',
    ],
    again: 'In three days, with a torch behind the vessel: the upper edge should have begun to sink.',
    look: 'Hold a torch behind the vessel: has the upper edge begun to sink?',
    disagree:
      'Makers of finings disagree which part comes first: some start with silica, some with the shellfish part. Only your own sachets’ sheet is right for them.',
    entry: 'What happened: the finings went in the wrong way round.',
  },
} satisfies Partial<Record<Mishap, MishapWords>>;
