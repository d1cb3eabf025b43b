import type { Judged } from '../../domain/judgement';

/** What is judged by eye, ear or hand: the question, its two answers, and how to make the test. */
type JudgementWords = { question: string; yes: string; no: string; how: string };

export const judgements: Record<Judged, JudgementWords> = {
  foam: {
    question: 'Is there foam, or a ring where foam has been?',
    yes: 'Yes, foam or a ring',
    no: 'No, nothing yet',
    how: 'Look through the wall or the lid with a torch; leave the lid on. A ring of dried foam counts. Bubbles in the airlock do not: lids leak, and warming air bubbles too.',
  },
  rush: {
    question: 'Did the knock raise a rush of gas?',
    yes: 'Yes, it fizzed up',
    no: 'No, it stayed calm',
    how: 'Stand back. Knock the surface once with a sanitised spoon, for one second, and watch. A hiss with foam that climbs is a rush; a few bubbles are calm.',
  },
  gas: {
    question: 'Was the shaken wine livelier than plain water?',
    yes: 'Yes, livelier than water',
    no: 'No, the same or less',
    how: 'Half fill a clean jar with plain water at the temperature of the wine. Seal it with your palm, shake it for ten seconds, lift your palm and listen. Do the same with wine in the same jar. Only a louder puff than the water’s is gas in the wine: warm water alone puffs a little. Do not pour this wine back.',
  },
  clear: {
    question: 'Is the wine clear?',
    yes: 'Yes, it is clear',
    no: 'No, still cloudy',
    how: 'White wine: hold small print behind the vessel, or behind a glass of it; you should be able to read it. Any colour: darken the room and shine a torch through from behind; there should be no milky beam. Red in a glass: tilt it over the torch and look at the thin edge.',
  },
  closures: {
    question: 'Has any cork or cap risen, bulged or leaked?',
    yes: 'Yes, at least one has',
    no: 'No, all are sound',
    how: 'Run a finger over the top of every cork or cap and look for wet necks. Look before you lift. If one has risen, do not move warm bottles: throw a thick towel over them and protect your eyes.',
  },
};
