import type { Gravity } from '../../domain/gravity';
import type { Act } from '../../procedure/step';
import type { Steps } from './steps';
import { addSachet } from './adding';
import { cautions } from './cautions';
import { quoted } from './counted';

const sachetsOf = (act: Act): number =>
  act.kind === 'account' ? act.sachets.reduce((sum, { count }) => sum + count, 0) : 0;

/** The printed name of the sachet that a stir follows. */
const sachetOf = (act: Act): string => ('sachet' in act ? quoted(act.sachet.printed) : 'it');

const secondsOf = (act: Act): number => ('seconds' in act ? act.seconds : 0);

type Start =
  | 'lay out sachets'
  | 'check hydrometer'
  | 'measure brim'
  | 'choose a place'
  | 'wash gear'
  | 'rinse gear'
  | 'mix sanitiser'
  | 'sanitiser contact'
  | 'drain gear'
  | 'pour first water'
  | 'add sachet'
  | 'stir in'
  | 'wait after'
  | 'pour juice'
  | 'rinse juice bag'
  | 'fill to mark'
  | 'stir must'
  | 'read start'
  | 'take must temperature'
  | 'close with airlock';

/** From the closed box to the closed lid. */
export const stepsStart: Pick<Steps, Start> = {
  'lay out sachets': (act, f) => ({
    show: `Lay out ${f.count(sachetsOf(act))} sachets in order of use.`,
    say: `Lay the ${f.count(sachetsOf(act))} sachets in a row, in order of use, with the yeast apart. Check each one by the name printed on it.`,
    why: 'This is the cheapest moment to find that one is missing. The worst mistake in the whole job is the wrong sachet.',
    more: 'If one is missing, ask where you bought the kit and keep the juice closed. Keep the empty sachets to the end, so that they can be counted. Look for fish, shellfish, egg, milk and sulphite on them: whoever drinks the wine may need to know.',
  }),
  'check hydrometer': (_, f) => ({
    show: 'Float the hydrometer in plain water.',
    say: 'Float the hydrometer in plain water, spin it, and read it at eye level. Take the temperature of the water too.',
    why: 'Few hydrometers are exactly right. What yours shows in water is taken off every later reading.',
    more: `Its paper says which temperature it is made for: 20 °C, or 15.6 °C, which is 60 °F. Look whether its lines are ${f.gravity(10 as Gravity)} or ${f.gravity(20 as Gravity)} apart. Use the jar, never the big vessel: if a hydrometer breaks in the wine, the wine is lost.`,
  }),
  'measure brim': () => ({
    show: 'Measure how much the first vessel holds to the brim.',
    say: 'Find out how much the first vessel holds to the brim. Its label may say so; a measuring jug is surer.',
    why: 'Foam climbs in the first days. It needs about a quarter of the batch as room above it.',
    more: 'With less room the guide holds back some of the water. Then put the vessel in a tray, and have a hose ready in place of the airlock.',
  }),
  'choose a place': () => ({
    show: 'Choose where the vessel will stand, and put it there.',
    say: 'Choose a place that is warm by day and night, out of the sun, with air. Put the empty vessel there now.',
    why: 'Cold nights stop the yeast and make a wine look finished that is not. A full vessel should never have to be carried.',
    more: 'Put it a little higher than the floor, on something that cannot tip, so that it can be siphoned later. Not on a heat pad, least of all glass: wrap it, or warm the room.',
    caution: cautions.carbonDioxide,
  }),
  'wash gear': () => ({
    show: 'Wash everything that will touch the juice.',
    say: 'Wash everything that will touch the juice, until nothing is seen or felt. Think of the lid, the tap, the spoon, the thermometer and the scissors.',
    why: 'Nothing sanitises dirt. Washing takes the dirt away; sanitising comes after it.',
    more: 'Plain cleaner, a soft cloth and warm water. No perfume and no chlorine bleach: both can be tasted in the wine. Nothing that has held strong food.',
    caution: cautions.hotWater,
  }),
  'rinse gear': () => ({
    show: 'Rinse everything with plain water.',
    say: 'Rinse everything with plain water, until it no longer feels slippery.',
    why: 'What is left of the cleaner would weaken the sanitiser, and can be tasted.',
  }),
  'mix sanitiser': () => ({
    show: 'Mix the sanitiser with water.',
    say: 'Mix the sanitiser as its label says, and measure both parts.',
    why: 'Too weak, it does not work; too strong, it is left in the wine. Only its own label knows the right strength.',
    more: 'Make it fresh: most solutions fade. Look on the label whether it is to be rinsed off, and how long it must stay on.',
    caution: cautions.sanitiser,
  }),
  'sanitiser contact': (act, f) => ({
    show: `Keep everything wet with sanitiser for ${f.duration(secondsOf(act))}.`,
    say: `Wet every surface, inside and out, and keep it wet for ${f.duration(secondsOf(act))}. If the label asks for longer, take longer.`,
    why: 'Sanitiser needs time on the surface, not only a splash.',
    more: 'Lid, grommet, airlock, spoon, thermometer, hydrometer and jar, scissors: they are the ones that get forgotten.',
    caution: cautions.sanitiser,
  }),
  'drain gear': () => ({
    show: 'Drain everything, and keep it off the table.',
    say: 'Let everything drain. Rinse only if the label says so, and lay nothing back on the table.',
    why: 'Sanitised gear stays so only until it touches something that is not.',
    more: 'Lay small things on the upturned lid. Sanitise your hands too, each time before they touch what touches wine.',
  }),
  'pour first water': ({ litres }, f) => ({
    show: `Pour ${litres === undefined ? 'the first water' : f.litres(litres)}${litres === undefined ? '' : ' of warm water'} into the vessel.`,
    say: `Pour ${litres === undefined ? 'the first water' : `${f.litres(litres)} of water`} into the vessel: warm to the hand, not hot.`,
    why: 'The clay that goes in next swells in warm water. In thick cold juice it would clump.',
    more: 'Water that you would drink is good enough. If it smells strongly of chlorine, let it stand overnight.',
    caution: cautions.hotWater,
  }),
  'add sachet': (act) => addSachet(act),
  'stir in': (act, f) => ({
    show: `Stir ${sachetOf(act)} in for ${f.duration(secondsOf(act))}.`,
    say: `Stir ${sachetOf(act)} in well, without splashing, for ${f.duration(secondsOf(act))}. I keep the time.`,
    why: 'What is not spread through the whole vessel works on part of it only.',
  }),
  'wait after': (act, f) => ({
    show: `Wait ${f.duration(secondsOf(act))} before the next one.`,
    say: `Wait ${f.duration(secondsOf(act))} now. Touch nothing until I call you.`,
    why: 'This part needs its time alone. The next one, too early, would undo it.',
    more: 'You may leave the room; the time runs on. Keep the vessel covered.',
  }),
  'pour juice': () => ({
    show: 'Pour the juice into the vessel.',
    say: 'Are the scissors sanitised? Hold the neck of the bag low over the vessel, cut, and pour slowly.',
    why: 'Poured low it does not splash. Cut with clean scissors, it brings nothing in with it.',
    more: 'Sit the bag on the rim, or have someone hold it. If the kit has a second bag for sweetening, that one stays closed.',
    caution: 'A full bag is heavy and slips in wet hands. Hold it with both hands, or with a second person.',
  }),
  'rinse juice bag': () => ({
    show: 'Rinse the juice bag with water into the vessel.',
    say: 'Rinse the bag with a little warm water, shake it, and pour that in too. Twice is better than once.',
    why: 'What sticks to the bag is sugar and taste that the batch is short of.',
  }),
  'fill to mark': ({ litres }, f) => ({
    show: `Fill with cool water up to ${litres === undefined ? 'the mark' : f.litres(litres)}.`,
    say: `Fill with water up to ${litres === undefined ? 'the mark' : f.litres(litres)}, and stop at the mark. Juice and water together, not water alone.`,
    why: 'Too little can be put right with a jug. Too much never comes out again, and makes a thin wine.',
    more: 'Count the jugs aloud. Check which unit the mark is in: a US gallon and an imperial gallon differ by a fifth. The last jugs can be warmer or cooler, to bring the juice to the warmth that yeast likes.',
    caution: cautions.lifting,
  }),
  'stir must': (act, f) => ({
    show:
      act.nth > 1
        ? `Stir once more, for ${f.duration(secondsOf(act))}.`
        : `Stir hard for ${f.duration(secondsOf(act))}.`,
    say:
      act.nth > 1
        ? `Stir once more, from the bottom to the top, for ${f.duration(secondsOf(act))}.`
        : `Stir hard, from the bottom to the top, for ${f.duration(secondsOf(act))}. I keep the time.`,
    why: 'Thick juice lies at the bottom and looks mixed when it is not. Air is welcome now, for the only time: the yeast uses it.',
    more: 'Scrape along the bottom and the wall. Half-mixed juice reads wrong by almost 0.010, even after a drill.',
  }),
  'read start': (act) => ({
    show: act.nth > 1 ? 'Read the start gravity once more.' : 'Read the start gravity.',
    say: `${act.nth > 1 ? 'One more reading. ' : ''}Draw a sample from the middle and take its temperature. Then spin the hydrometer and read it at eye level, at the bottom of the curve.`,
    why: 'It shows whether juice and water are right, and the strength of the wine is reckoned from it.',
    more: 'The spin throws off bubbles, which lift the hydrometer; it must not touch the wall. Pour the sample back only if jar and hydrometer are sanitised.',
  }),
  'take must temperature': () => ({
    show: 'Take the temperature of the juice.',
    say: 'Put the thermometer into the middle of the juice, wait one minute, and tell me what it shows.',
    why: 'Yeast sulks in cold juice and dies in hot. This is the one moment to choose.',
    more: 'Outside the range, close the lid and wait: the juice can stand for a day.',
  }),
  'close with airlock': (act) => ({
    show: 'Close the lid, and fit the airlock half full of water.',
    say:
      act.nth > 1
        ? 'Close the new vessel, and fit the airlock, half full of water.'
        : 'Close the lid, and fit the airlock, half full of water. Note the day: it is day zero.',
    why: 'The gas gets out and nothing gets in. Bubbles or none, the airlock does not tell how far the wine is.',
    more: 'Fill the airlock again when it runs low. If foam climbs into it, rinse it at once: blocked, it can fire off the lid.',
    caution: cautions.carbonDioxide,
  }),
};
