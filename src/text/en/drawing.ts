/** What a drawn vessel shows: each part is told only where it is drawn. */
type DrawnVessel = {
  shape: 'bucket' | 'carboy';
  litres: string;
  holds: 'nothing' | 'water' | 'cloudy' | 'hazy' | 'bright';
  sediment: 'none' | 'thin' | 'thick';
  top?: 'airlock' | 'spoon' | undefined;
  goal?: string | undefined;
};

const shapes: Record<DrawnVessel['shape'], string> = {
  bucket: 'The fermenting bucket',
  carboy: 'The glass vessel',
};

const holds: Record<DrawnVessel['holds'], string> = {
  nothing: '',
  water: ' of water',
  cloudy: ', cloudy',
  hazy: ', hazy',
  bright: ', bright',
};

const sediments: Record<DrawnVessel['sediment'], string> = {
  none: '',
  thin: ', with a thin layer of sediment at the bottom',
  thick: ', with a thick layer of sediment at the bottom',
};

const tops = {
  airlock: { bucket: '. Lid and airlock are on', carboy: '. Stopper and airlock are on' },
  spoon: { bucket: '. A spoon stirs from bottom to top', carboy: '. A spoon stirs from bottom to top' },
};

/** The drawings in words: each says what can be seen in it. */
export const drawing = {
  vessel: ({ shape, litres, holds: what, sediment, top, goal }: DrawnVessel) =>
    [
      what === 'nothing' ? `${shapes[shape]}, empty` : `${shapes[shape]}, filled to ${litres}`,
      holds[what],
      sediments[sediment],
      top ? tops[top][shape] : '',
      goal === undefined ? '' : `. A dashed line marks ${goal}`,
    ].join(''),
  stirring: (other: boolean) =>
    `A spoon in the vessel, seen from above: it goes round ${other ? 'anticlockwise' : 'clockwise'}`,

  siphon: (litres: string, crossed: string) =>
    `${litres} siphoned from the upper vessel into the lower: ${crossed} have crossed. The hose ends below the surface and above the sediment, and lets the wine out at the bottom`,
  reserve: {
    out: (reserve: string) => `Wine on its way from the vessel into a jug: ${reserve} of reserve`,
    back: (reserve: string) => `Wine on its way from the jug back into the vessel: ${reserve} of reserve`,
  },
  gap: {
    told: (gap: string) => gap,
    atMost: (gap: string) => `at most ${gap}`,
    shown: (gap: string) => `The neck of the vessel: the wine stands ${gap} below the stopper`,
    shownBeside: (gap: string, most: string) =>
      `The neck of the vessel: the wine stands ${gap} below the stopper. A dashed line marks ${most}, the most it may be`,
  },

  airlock: {
    label:
      'Three airlocks. Half full of water is right. Dry lets air in. Sucked in has its water in the vessel: both are crossed out',
    words: { filled: 'half full', dry: 'dry', 'sucked in': 'sucked in' },
  },
  foam: {
    label:
      'Two vessels cut open. In the one foam lies on the juice, and a ring marks where it stood higher; in the other the surface is bare',
    yes: 'foam or a ring',
    no: 'nothing yet',
  },
  rush: {
    label:
      'A spoon has knocked the surface of two wines. In the one bubbles rush up and foam climbs to the rim; in the other the surface stays calm',
    yes: 'a rush',
    no: 'calm',
  },
  torch: {
    label:
      'A torch shines through two vessels in the dark. In the milky one its beam stands in the wine; in the clear one it passes unseen, and only two spots show on the glass',
    milky: 'milky',
    clear: 'clear',
  },
  shake: {
    label:
      'Two shaken jars, the palm lifted. In the livelier one gas puffs out, and the wine is full of bubbles and foam; in the other the wine is as quiet as water',
    lively: 'livelier',
    quiet: 'like water',
  },

  hydrometer: (where: string, band: string | undefined, lower: string | undefined) =>
    [
      `A hydrometer in its jar, ${where}`,
      ...(band === undefined ? [] : [`Marked beside the stem: ${band}`]),
      ...(lower === undefined ? [] : [`Day by day it sinks deeper: ${lower}`]),
      'The eye is level with the flat of the surface, not with the rim that climbs the glass',
    ].join('. '),
  floats: {
    'in water': (gravity: string) => `in plain water, at ${gravity}`,
    'as last read': (gravity: string) => `at ${gravity}, as it was last read`,
    'in the range': (gravity: string) => `drawn at ${gravity}, in the middle of the range`,
    'at the limit': (gravity: string) => `drawn at ${gravity}`,
  },
  toMove: (gravity: string) => `to be moved: ${gravity} or lower`,

  bottle: {
    empty: 'Empty bottles on a shelf',
    filled: 'Bottles, filled, closed and standing',
    lying: 'Bottles laid down, the wine against their closures',
    counted: (bottles: string, count: string) => `${bottles}: ${count}`,
    number: (count: string) => `${count} bottles`,
  },
  thermometer: {
    label: (at: string, wanted: string) =>
      `A thermometer standing in the wine, drawn at ${at}. Marked beside it: ${wanted}`,
    range: (lowest: string, highest: string) => `${lowest} to ${highest}`,
    atLeast: (lowest: string) => `${lowest} or warmer`,
  },
  tub: 'A tub of water with a spoon, a hose and a hydrometer in it',
};
