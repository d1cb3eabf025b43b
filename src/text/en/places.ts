import type { Gate, Place } from '../../procedure/phase';

/** The places of the procedure, in plain words. */
export const places: Record<Place, string> = {
  prepare: 'Check the box',
  clean: 'Wash',
  sanitise: 'Sanitise',
  mix: 'Mix the juice',
  'proving mixed': 'Is it mixed?',
  pitch: 'Add the yeast',
  ferment: 'Ferment',
  'proving dry': 'Is it finished?',
  rack: 'Off the sediment',
  stabilise: 'Stabilise',
  degas: 'Stir out the gas',
  'proving gas-free': 'Is the gas out?',
  fine: 'Help it clear',
  'top up': 'Top up',
  clear: 'Leave to clear',
  'proving clear': 'Is it clear?',
  'proving still': 'Is it still?',
  bottle: 'Bottle',
  stand: 'Stand upright',
  label: 'Label',
  'wash up': 'Wash up',
  rest: 'Lay down and wait',
  finished: 'Finished',
  'kept unbottled': 'Kept unbottled',
  discarded: 'Thrown away',
  'left the guide': 'Went on without the guide',
};

/** A gate: what it asks, why it asks that, and what it means when it is open. */
type GateWords = { question: string; why: string; open: string };

export const gates: Record<Gate, GateWords> = {
  'proving mixed': {
    question: 'Is the juice mixed all the way to the bottom?',
    why: 'Thick juice lies at the bottom and hides from the hydrometer. A wrong start reading makes the strength of the wine a guess.',
    open: 'The juice is mixed. You may go on to the yeast.',
  },
  'proving dry': {
    question: 'Is fermentation really over?',
    why: 'Stabiliser does not stop yeast that is at work, and sugar left in a closed bottle turns into pressure. Neither the calendar nor the airlock can tell; the hydrometer can, given enough readings.',
    open: 'Fermentation is over. You may go on to the next step.',
  },
  'proving gas-free': {
    question: 'Is the gas out of the wine?',
    why: 'Gas holds sediment up, so a gassy wine does not clear, and in the bottle it prickles and pushes at the cork.',
    open: 'The gas is out. You may go on to help the wine clear.',
  },
  'proving clear': {
    question: 'Has the wine fallen bright?',
    why: 'What is cloudy in the vessel stays cloudy in the bottle, and settles there.',
    open: 'The wine is clear. One more question before bottling: is it still?',
  },
  'proving still': {
    question: 'Has nothing moved since the wine was last touched?',
    why: 'A fall after the last addition means that the yeast is back at work. In a closed bottle that is how bottles burst.',
    open: 'The wine is still. You may go on to bottling.',
  },
};
