import type { Mishap } from '../../procedure/mishap';
import type { withSachets } from '../../procedure/mishaps/with-sachets';
import { cautions } from './cautions';
import type { MishapWords } from './mishap-words';

const NO_MORE_STABILISER = 'Add no more stabiliser of any kind: one dose is all that a batch gets.';

/** Sachets that went wrong. */
export const mishapsWithSachets: Record<Extract<Mishap, keyof typeof withSachets>, MishapWords> = {
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
  'finings left out': {
    title: 'A fining was left out',
    spoken: 'one of the finings was left out',
    tell: 'A fining wrapper is still full after fining day.',
    lost: 'Time. One of a pair alone clears badly, and can itself hang in the wine as a haze.',
    reversible: 'All of it: it can still be given, and then the wine clears from that day.',
    now: [
      'Choose below which one it was.',
      'Check that the wine is as warm as the sheet wants for fining.',
      'Give it as the sheet says, then top up, and take a new baseline.',
    ],
    again: 'In three days, with a torch behind the vessel.',
    look: 'Hold a torch behind the vessel: is it beginning to clear?',
    entry: 'What happened: one of the finings was left out.',
  },
  'forgot bentonite': {
    title: 'The bentonite was forgotten',
    spoken: 'I forgot the bentonite',
    tell: 'Its sachet is still full, and the juice is poured already.',
    lost: 'Very little. Bentonite takes out protein haze while the yeast keeps it moving; without it the wine may clear later.',
    reversible: 'The wine will be fine without it. It is left out from now on.',
    now: [
      'If nothing but juice and water is in the vessel yet, it may still go in, shaken in a jar with warm water first. Tell a wrong sachet then, so that the journal has it.',
      'Else put it away. Do not chase it with the finings at the end.',
      'Go on with what is shown.',
    ],
    again: 'When it should be clearing. If it is late, give it time before anything else.',
    look: 'Is it clearing, or is it still too early for that?',
    disagree:
      'One shop’s answers say that late bentonite curdles with the finings of the end; others use it after fermenting without trouble. The house leaves it out.',
    entry: 'What happened: the bentonite was forgotten, and is left out.',
  },
  'forgot yeast': {
    title: 'The yeast was forgotten',
    spoken: 'I forgot the yeast',
    tell: 'The yeast’s own sachet is still full. A silent airlock alone does not tell.',
    lost: 'A day. Juice without yeast is open to whatever else wants it, so it should be a day and no more.',
    reversible: 'All of it, if the juice smells clean.',
    now: [
      'Smell and look: a film, fur or a smell of vinegar or nail varnish means that something else was quicker.',
      'Take the temperature of the juice, and bring it into range.',
      'Add the yeast by its name, and close it. Its days count from now.',
    ],
    again: 'Tomorrow, for foam.',
    look: 'Is there foam on it?',
    entry: 'What happened: the yeast had been forgotten.',
  },
  'wrapper too many': {
    title: 'There is one empty wrapper too many',
    spoken: 'there is one empty wrapper too many',
    tell: 'A wrapper is empty whose sachet the journal does not have in the wine.',
    lost: 'That sachet. If it is not on the floor or in the sink, it is in the wine, and counts as in.',
    reversible: 'The plan. From here it goes on as if you had said so at the time.',
    now: [
      'Look on the floor, in the sink and in the jug first.',
      'Ask whoever was in the room.',
      'If it is nowhere else, choose it below: a dose that is in doubt is never given twice.',
    ],
    again: 'Tomorrow, for foam and smell.',
    look: 'Does it foam and smell as it did before?',
    entry: 'What happened: an empty wrapper too many, so its sachet counts as in.',
  },
  'sachet still full': {
    title: 'A sachet is still full that should be in',
    spoken: 'a sachet is still full',
    tell: 'You hold it in your hand, unopened, and the journal has it in the wine.',
    lost: 'Nothing, while it is unopened.',
    reversible: 'All of it. It gets its turn again, at the place where it may go in.',
    now: [
      'Read the printed name aloud. A second sachet with the same name may belong to the same dose.',
      'Choose it below. The guide leads you back to where it may go in; for stabiliser that is the proof of dryness.',
      'Do not tip it in at once.',
      'If the wine is in its bottles already, keep them cold, upright and apart, and drink them first. Pour them back only if you mean to finish the work.',
    ],
    again: 'Tomorrow, when you have read the plan again.',
    look: 'Does the full sachet lie ready, by its name, for its turn in the plan?',
    entry: 'What happened: a sachet was still full, so it is not in the wine.',
  },
  'sachet lost': {
    title: 'A sachet is lost or spilled',
    spoken: 'a sachet is lost',
    tell: 'It is neither full nor in the wine: torn, wet, spilled, or gone.',
    lost: 'The sachet. The wine has not noticed yet.',
    reversible: 'All of it: everything in the box can be bought singly, and the wine keeps where it is.',
    cautions: [
      'Spilled sulphite bites the eyes and the lungs. Open a window, wipe it up wet, with gloves, and keep it away from acid cleaners and bleach.',
    ],
    now: [
      'Get the same thing, for the same volume. By its name: never by its colour.',
      'Do not share out what is left by eye. Teaspoons of powder differ by half.',
      'If it cannot be had, leave it out with a reason when its turn comes; the rules for what hangs on it then follow.',
    ],
    again: 'In three days: do you have it?',
    look: 'Do you have the same sachet again?',
    entry: 'What happened: a sachet was lost or spoiled before it went in.',
  },
  'past its date': {
    title: 'The kit is past its date',
    spoken: 'the kit is past its date',
    tell: 'The date is on the box, and often another on the yeast.',
    lost: 'Some freshness and colour: juice browns with the years. Yeast and finings age first.',
    reversible: 'Yeast and finings can be bought new. What the juice has lost, it has lost.',
    now: [
      'Look at the juice bag: blown up, leaking or furry means that it goes back.',
      'Wake the yeast in a little warm water with sugar. If nothing foams within half an hour, take fresh yeast.',
      'Buy fresh finings for fining day if theirs are more than a year over.',
      'Make it all the same, and drink it young.',
    ],
    again: 'Two days after the yeast, for foam.',
    look: 'Is there foam, two days after the yeast?',
    entry: 'What happened: the kit was past its date.',
  },
};
