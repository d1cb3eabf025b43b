import { cautions } from './cautions';

/** The safety card: what can hurt someone, in the order in which the work meets it. */
export const safety = {
  title: 'Safety card',
  print: 'print this card',
  hazards: [
    { heading: 'Sulphite and asthma', says: cautions.fumes },
    { heading: 'Sanitiser', says: cautions.sanitiser },
    { heading: 'Lifting and glass', says: cautions.lifting },
    { heading: 'Hot water', says: cautions.hotWater },
    { heading: 'Gas in closed rooms and chests', says: cautions.carbonDioxide },
    { heading: 'Opening the vessel', says: cautions.openingVessel },
    { heading: 'Siphon', says: cautions.byMouth },
    { heading: 'Foam', says: cautions.eruption },
    { heading: 'Power tools', says: cautions.drill },
    { heading: 'Corker', says: cautions.corker },
    { heading: 'Chipped glass', says: cautions.chippedGlass },
    {
      heading: 'Bottles that may burst',
      says: `${cautions.bottlesMayBurst} Cool them before you open one, over a sink.`,
    },
    {
      heading: 'Children and age',
      says: 'Keep children away from sachets, vessels and bottles. Wine is for people of the legal age where you live, and for nobody who is pregnant.',
    },
    {
      heading: 'What the law allows',
      says: 'How much you may make at home, and whether you may give it away, differs from country to country. It is not for sale.',
    },
  ],
  room: {
    heading: 'How much gas, in your room',
    kit: 'Which wine',
    size: 'Size of the room',
    unit: 'cubic metres',
    hint: 'Length × width × height in metres. A room of 4 by 3 by 2.5 has 30.',
    misread: (given: string) => `“${given}” is not a room’s size. Type cubic metres between 0.5 and 1000.`,
    gas: (wine: string, kilograms: string, litres: string) =>
      `${wine}: the whole ferment gives off about ${kilograms} kg of carbon dioxide, some ${litres} litres of gas, over one to two weeks.`,
    share: (percent: string, cubicMetres: string) =>
      `If none of it left a room of ${cubicMetres} cubic metres, the air would come to ${percent} carbon dioxide.`,
    limits:
      'From 4 % it is dangerous to life at once; over a working day 0.5 % is the limit. This is an upper bound, not a forecast: any draught carries gas away, so keep one going.',
  },
  guidance: cautions.guidance,
};
