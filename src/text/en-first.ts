import { firstScreens } from './en/first-screens';
import { firstProblems } from './en/problems-first';
import { units } from './en/units';
import { updates } from './en/updates';

/** The English that the first screen needs, before any batch is opened. */
export const enFirst = {
  language: 'en',
  name: 'English',
  units,
  problems: firstProblems,
  screens: firstScreens,
  updates,
};
