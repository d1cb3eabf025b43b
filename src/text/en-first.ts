import { firstScreens } from './en/first-screens';
import { problems } from './en/problems';
import { units } from './en/units';
import { updates } from './en/updates';

/** The English that the first screen needs, before any batch is opened. */
export const enFirst = {
  language: 'en',
  name: 'English',
  units,
  problems,
  screens: firstScreens,
  updates,
};
