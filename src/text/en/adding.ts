import type { Contents } from '../../procedure/contents';
import type { Sachet } from '../../procedure/kit-sheet';
import type { Act } from '../../procedure/step';
import type { StepWords } from '../text';
import { cautions } from './cautions';
import { quoted } from './counted';

const ALL = ['', '', 'both', 'all three', 'all four', 'all five', 'all six'];

/** The sachets by the words printed on them, with their number: “Wine yeast”, both sachets of “Sorbate”. */
export const named = ({ printed, count }: Pick<Sachet, 'printed' | 'count'>): string =>
  count === 1 ? quoted(printed) : `${ALL[count] ?? `all ${String(count)}`} sachets of ${quoted(printed)}`;

/** What decides how a sachet goes in, most telling first: a sachet can hold more than one thing. */
const TELLING: readonly Contents[] = [
  'yeast',
  'sorbate',
  'sulphite',
  'sweetening pack',
  'bentonite',
  'shellfish finings',
  'fish finings',
  'gelatine finings',
  'silica finings',
  'oak',
  'nutrient',
];

type Wording = (sachet: Sachet) => Omit<StepWords, 'caution'>;

const finings: Wording = (sachet) => ({
  show: `Pour in ${named(sachet)}.`,
  say: `Pour ${named(sachet)} slowly over the surface, and nothing else with it.`,
  why: 'Finings (clearing agents) catch what floats and carry it down. Parts that come in the wrong order or too close together undo each other.',
  more: 'Shake or knead the pouch first. If it must be mixed with warm water, the kit’s sheet says how much.',
});

const powder: Wording = (sachet) => ({
  show: `Add ${named(sachet)}.`,
  say: sachet.dissolveFirst
    ? `Dissolve ${named(sachet)} in a little cool water, and pour it in slowly.`
    : `Sprinkle ${named(sachet)} in, a little at a time.`,
  why: 'Yeast needs more than sugar; a little food at this point helps it to finish.',
});

const WORDINGS: Record<Contents, Wording> = {
  yeast: (sachet) => ({
    show: `Sprinkle ${named(sachet)} onto the juice.`,
    say: `Read the name on the sachet aloud. Then sprinkle ${named(sachet)} over the surface, and leave it there.`,
    why: 'Dry yeast wakes by itself on warm juice. Water that is too hot, or too long a soak, would kill part of it.',
    more: 'If the sachet itself asks for soaking first, follow it, and no longer than it says. The wrong sachet here is the dearest mistake of all: read the name once more.',
  }),
  sorbate: (sachet) => ({
    show: `Add ${named(sachet)}.`,
    say: sachet.dissolveFirst
      ? `Dissolve ${named(sachet)} in a little cool water. Pour it in slowly, and watch for foam.`
      : `Add ${named(sachet)} a little at a time, and watch for foam.`,
    why: sachet.contents.includes('sulphite')
      ? 'Sorbate keeps yeast from multiplying, and sulphite keeps bacteria from spoiling it. Neither stops yeast that is at work.'
      : 'Sorbate keeps the few yeast cells that are left from multiplying. It works only with sulphite beside it, and never stops yeast that is at work.',
    more: 'All of it goes into the whole batch: never part of a sachet, and never a second dose.',
  }),
  sulphite: (sachet) => ({
    show: `Add ${named(sachet)}.`,
    say: sachet.dissolveFirst
      ? `Dissolve ${named(sachet)} in a little cool water. Pour it in slowly, at arm’s length.`
      : `Add ${named(sachet)} slowly, at arm’s length.`,
    why: 'Sulphite guards the wine against air and bacteria. Without it, sorbate can turn to a smell of geraniums that nothing takes away.',
    more: 'It belongs on the label: the guide puts it there.',
  }),
  'sweetening pack': (sachet) => ({
    show: `Pour in ${named(sachet)}.`,
    say: `Pour ${named(sachet)} in slowly, and squeeze out the rest.`,
    why: 'The stabilisers are in and the yeast is done, so this sugar stays sweet. Any earlier it would have fermented.',
    more: 'It makes the wine heavier: gravity starts from a new baseline after this.',
  }),
  bentonite: (sachet) => ({
    show: `Sprinkle ${named(sachet)} onto moving water.`,
    say: `Stir the water until it turns. Then sprinkle ${named(sachet)} onto it, a little at a time.`,
    why: 'Bentonite is a clay that clears the wine. On still water it clumps, and lumps do nothing.',
    more: 'A few small lumps do no harm. Forgotten bentonite does no harm either: do not add it later beside other finings.',
  }),
  'shellfish finings': finings,
  'fish finings': finings,
  'gelatine finings': finings,
  'silica finings': finings,
  oak: (sachet) => ({
    show: `Add ${named(sachet)}.`,
    say: `Tip ${named(sachet)} in, and push it under once.`,
    why: 'Oak gives its taste while it lies in the wine. It floats for some days and then sinks by itself.',
  }),
  nutrient: powder,
};

const intoWine = (sachet: Sachet): Omit<StepWords, 'caution'> | undefined =>
  sachet.contents.includes('bentonite') && sachet.when === 'fine'
    ? {
        show: `Sprinkle ${named(sachet)} onto the moving wine.`,
        say: `Stir the wine gently until it turns. Then sprinkle ${named(sachet)} in, a little at a time.`,
        why: 'Bentonite is a clay that carries haze down. On still wine it clumps, and lumps do nothing.',
      }
    : undefined;

/** Powder makes the gas in wine come out all at once; what was dissolved in water hardly does. */
function cautionFor({ contents, when, dissolveFirst, allergen }: Sachet): string | undefined {
  const meetsGas =
    (when === 'ferment' || when === 'stabilise') && (!dissolveFirst || contents.includes('sorbate'));
  const said = [
    ...(contents.includes('sulphite') ? [cautions.fumes] : []),
    ...(meetsGas || when === 'ferment' ? [cautions.eruption] : []),
    ...(allergen && allergen !== 'sulphite' ? [cautions.allergen[allergen]] : []),
  ];
  return said.length === 0 ? undefined : said.join(' ');
}

/** A sachet goes in: by its printed name, in the way that what it holds asks for. */
export function addSachet(act: Act): StepWords {
  if (act.kind !== 'add') throw new Error(`${act.id} adds no sachet`);
  const telling = TELLING.find((contents) => act.sachet.contents.includes(contents)) ?? 'nutrient';
  const words = intoWine(act.sachet) ?? WORDINGS[telling](act.sachet);
  const caution = cautionFor(act.sachet);
  return caution === undefined ? words : { ...words, caution };
}
