import type { Litres } from '../../domain/unit';
import type { Act } from '../../procedure/step';
import { cautions } from './cautions';
import { counted } from './counted';
import type { Steps } from './steps';

const wantedOf = (act: Act): number => ('wanted' in act ? act.wanted : 0);

type Finish =
  | 'take wine temperature'
  | 'return reserve'
  | 'top up'
  | 'measure gap'
  | 'read baseline'
  | 'leave to clear'
  | 'look through the wine'
  | 'count bottles'
  | 'sanitise bottles'
  | 'fill and close'
  | 'count filled'
  | 'stand upright'
  | 'label bottles'
  | 'wash up gear'
  | 'lay down'
  | 'look at closures'
  | 'first taste';

/** From the finings to the first glass. */
export const stepsFinish: Pick<Steps, Finish> = {
  'take wine temperature': () => ({
    show: 'Take the temperature of the wine.',
    say: 'Put the thermometer into the middle of the wine, wait one minute, and tell me what it shows.',
    why: 'Finings fail in cold wine, and they cannot be given twice.',
  }),
  'return reserve': ({ litres }, f) => ({
    show: `Pour the reserve${litres === undefined ? '' : ` of ${f.litres(litres)}`} back into the wine.`,
    say: 'Pour the reserve back, down the wall, without splashing. Leave its sediment in the jar.',
    why: 'It is the best thing to fill the vessel with: the same wine.',
    more: 'Smell it first. If it smells of vinegar or solvent, leave it out and top up with something else.',
  }),
  'top up': (_, f) => ({
    show: 'Fill the vessel to just below its stopper.',
    say: 'Fill the vessel to just below its stopper, with a like wine or a little water. Tell me how much went in.',
    why: `Air above the wine turns it brown while it waits. A like wine is best: ${f.litres(0.5 as Litres)} of water takes a whole batch from 13 per cent of alcohol to about 12.7.`,
    more: 'How high is on the kit’s sheet; for most vessels it is well up in the neck. If your kit tells you not to top up, enter nothing added.',
  }),
  'measure gap': (act, f) => ({
    show: act.nth > 1 ? 'Measure up to the stopper once more.' : 'Measure from the wine up to the stopper.',
    say: `Hold a ruler against the glass${act.nth > 1 ? ' once more' : ''}, and measure from the wine up to the stopper. ${act.kind === 'gap' ? `${f.count(act.atMost)} mm or less is wanted.` : 'Little is wanted.'}`,
    why: 'The wine meets as much air as there is in this gap, for as long as it clears.',
    more: 'Measure up to the underside of the stopper as it sits. If it is more, the guide asks you to top up again, or to say why not.',
  }),
  'read baseline': (act) => ({
    show: act.nth > 1 ? 'Read the gravity once more, as baseline.' : 'Read the gravity, as baseline.',
    say: 'Stir the sample, shake its gas out, and take its temperature. Then read the hydrometer at eye level.',
    why: 'The last reading before bottling is compared with this one. A fall between them would be pressure in the bottles.',
    more: 'What is added after this makes a new baseline necessary.',
  }),
  'leave to clear': () => ({
    show: 'Leave the vessel dark, still and closed.',
    say: 'Fit the airlock, put the vessel in the dark, and leave it still.',
    why: 'What floats sinks by itself, if nothing stirs it and no gas holds it up. A wine that has done so has fallen bright.',
    more: 'Cover glass with a cloth. Fill the airlock again every few weeks. Not beside the boiler, and not where it gets cold at night.',
  }),
  'look through the wine': (act) => ({
    show: act.nth > 1 ? 'Look through the wine once more.' : 'Look through the wine.',
    say: 'Look through the wine: for print behind it if it is white, with a torch in the dark if it is any colour.',
    why: 'What is cloudy in the vessel stays cloudy in the bottle.',
    more: 'Do not lift or tilt the vessel to look. The same light each time makes it a fair comparison.',
  }),
  'count bottles': (act, f) => ({
    show: `Count out ${counted(f, wantedOf(act), 'bottle')}, and closures to match.`,
    say: `The wine fills ${counted(f, wantedOf(act), 'bottle')}. Count your bottles and closures, and run a finger round each rim.`,
    why: 'A vessel that stays half empty takes in air. A chipped rim breaks in the corker.',
    more: 'Take a tenth more closures than bottles. Screw caps for screw threads, corks for bottles made for cork; never a cork in a screw thread.',
    caution: cautions.chippedRim,
  }),
  'sanitise bottles': () => ({
    show: 'Sanitise the bottles, the filler and the closures.',
    say: 'Sanitise the bottles, the filler, the hose and the closures. Let the bottles drain upside down.',
    why: 'Nothing comes after this that could put it right.',
    more: 'Do not boil corks or soak them for long: they crumble. Rinse bottles only if the sanitiser’s label says so.',
    caution: cautions.sanitiser,
  }),
  'fill and close': () => ({
    show: 'Fill and close the bottles, one after the other.',
    say: 'Fill each bottle to about two centimetres below its closure, and close it at once. Say the count at every fifth.',
    why: 'Too full, and the cork creeps or the bottle breaks. Too empty, and the air in it ages the wine.',
    more: 'Never leave filled bottles open. Tilt the vessel early and gently, and stop before the sediment. The last, cloudy one is for the kitchen: mark it.',
    caution: `${cautions.corker} ${cautions.chippedGlass}`,
  }),
  'count filled': (act, f) => ({
    show: 'Count the filled bottles.',
    say: `Count the filled bottles. I expect about ${f.count(wantedOf(act))}.`,
    why: 'Labels, the wine left in store and the list of gifts are kept by this number.',
  }),
  'stand upright': () => ({
    show: 'Leave the bottles standing for a day.',
    say: 'Leave the bottles standing upright for a day.',
    why: 'The air that the cork pressed in gets out, and the cork takes hold.',
    more: 'Wipe the necks. A cork that rises now can be pressed in again; one that rises later means gas.',
  }),
  'label bottles': () => ({
    show: 'Label the bottles.',
    say: 'Label the bottles: the name, the date, and what someone may be allergic to.',
    why: 'In a year nobody remembers. A guest who reacts to sulphite, fish or milk must be able to read it.',
    more: 'The guide knows which sachets went in, and names the allergens from them. How strong it is can be told only about.',
  }),
  'wash up gear': () => ({
    show: 'Wash everything up, and let it dry.',
    say: 'Wash everything up now, while it is wet, and let it dry open.',
    why: 'Dried sediment is hard to get off, and scratches from scraping hold dirt for the next batch.',
    caution: cautions.hotWater,
  }),
  'lay down': () => ({
    show: 'Lay the bottles down in a cool, dark place.',
    say: 'Lay the corked bottles down, somewhere cool, dark and steady. Bottles with caps stay upright.',
    why: 'Lying wine keeps the cork wet and tight. Warmth and light age wine badly.',
    more: `Put them in a box or behind a door, with something under them. ${cautions.guidance}`,
  }),
  'look at closures': (act) => ({
    show: act.nth > 1 ? 'Look over the closures once more.' : 'Look over the closures.',
    say: 'Before you touch a bottle, look whether any cork or cap has risen, bulged or leaked.',
    why: 'If the yeast came back, it shows in the first six weeks, and at the closures first.',
    more: 'One that has risen: towel, eye protection, cool the room, and do not carry it while it is warm.',
    caution: cautions.bottlesMayBurst,
  }),
  'first taste': () => ({
    show: 'Taste the first bottle.',
    say: 'Open one bottle and taste it. It is young: flat or sharp is what to expect.',
    why: 'Most wine is judged too early. Write down what you taste, and compare in three months.',
    more: 'Crystals like glass at the cork are harmless tartar, if no bottle was broken or chipped. If it fizzes, do not open others: cool them, and look at the safety page.',
  }),
};
