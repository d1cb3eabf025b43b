import { problems } from './en/problems';
import { screens } from './en/screens';
import { units } from './en/units';
import { updates } from './en/updates';

/** The English that the first screen needs, before any batch is opened. */
export const enFirst = {
  language: 'en',
  name: 'English',
  units,
  problems,
  screens,
  updates,
};
