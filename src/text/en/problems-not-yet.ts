import type { Litres } from '../../domain/unit';
import type { Sentences } from '../sentences';
import { lower, quoted } from './counted';

/** What holds a gate or a check shut, from the box to the stabilisers. */
export const notYet = {
  'box-not-checked': () => 'The sachets have not been checked by name. Lay them out and tick each one.',
  'sachets-missing': ({ missing }, f) =>
    `${f.list(missing.map(quoted))} ${missing.length === 1 ? 'is' : 'are'} missing. Look in the lid and between the bags; if it stays missing, ask where you bought the kit, and do not open the juice.`,
  'hydrometer-not-checked': () =>
    'The hydrometer has not been checked in plain water. Float it in water, and enter what it shows.',
  'vessel-too-small': ({ brim, batch }, f) =>
    `The vessel holds ${f.litres(brim)} to the brim, and the batch is ${f.litres(batch)}: foam would have no room. Use one that holds ${f.litres((batch * 1.25) as Litres)} or more.`,
  'no-start-reading': () =>
    'There is no start reading yet. Stir, draw a sample from the middle, and read it.',
  'under-stirred': ({ seconds, wanted }, f) =>
    `The juice was stirred for ${f.duration(seconds)}; it needs ${f.duration(wanted)} by the timer. Stir again, bottom to top.`,
  'start-outside': ({ gravity, lowest, highest, litresOver }, f) => {
    const water = f.litres(Math.abs(litresOver) as Litres);
    const amount = litresOver > 0 ? `about ${water} of water too much` : `about ${water} of water too little`;
    return `The start reading is ${f.gravity(gravity)}; the sheet has ${f.gravity(lowest)} to ${f.gravity(highest)}. If the juice is well mixed, that is ${amount}. Stir and read again first, then check the fill mark and its unit.`;
  },
  'must-not-measured': () =>
    'The juice has not been measured for warmth. Take its temperature before the yeast goes in.',
  'must-too-cold': ({ must, lowest, highest }, f) =>
    `The juice is ${f.celsius(must)}; the yeast wants ${f.celsius(lowest)} to ${f.celsius(highest)}. Move it somewhere warmer, close it, and measure again.`,
  'must-too-warm': ({ must, lowest, highest }, f) =>
    `The juice is ${f.celsius(must)}; the yeast wants ${f.celsius(lowest)} to ${f.celsius(highest)}, and heat can kill it. Close it, let it cool, and measure again.`,
  'not-alive-yet': ({ hours }, f) =>
    `${f.hours(Math.floor(hours))} after the yeast there is no foam and no fall in gravity. Check that the juice is warm, stir it once, and look again.`,
  'not-low-enough-to-move': ({ gravity, limit }, f) =>
    `The wine reads ${f.gravity(gravity)}; it moves at ${lower(f.gravity(limit))}. Moved now it could foam out. Leave it, and read again tomorrow.`,
  'dryness-not-proven': () =>
    'It is not shown that fermentation is over, and this must not go in before. Take the readings that the dryness question asks for.',
  'dryness-stale': ({ hours, allowed }, f) =>
    `It is ${f.hours(Math.ceil(hours))} since fermentation was shown to be over, and that holds for ${f.hours(allowed)}. Take one fresh reading, and go on if it agrees.`,
  'added-since': ({ sachet }) =>
    `${quoted(sachet)} went in after fermentation was shown to be over, and may have woken the yeast. Take fresh readings, as if for the first time.`,
  'stabilisers-not-in-hand': ({ missing }, f) =>
    `${f.list(missing.map(quoted))} ${missing.length === 1 ? 'is' : 'are'} not in hand, and half a treatment spoils the wine. Find every one before you open any.`,
  'surface-rushes': () =>
    'A knock of the surface raised a rush of gas, and powder would make it erupt. Stir the gas out first, and knock again.',
  'no-room-for-foam': ({ room, wanted }, f) =>
    `The room above the wine is ${f.litres(room)}, and foam needs ${f.litres(wanted)}. Draw some wine off into a clean jar, close it, and keep it cool for topping up.`,
  'stabilisers-not-all-in': ({ missing }, f) =>
    `${f.list(missing.map(quoted))} ${missing.length === 1 ? 'is' : 'are'} not in yet, and sugar without it would ferment in the bottle. Add the stabiliser first.`,
} satisfies Partial<Sentences>;
