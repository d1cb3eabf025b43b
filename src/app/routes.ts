import type { Division } from '../domain/gravity';

/** Where in the app someone is. The address after the # says it, so that any static host will do. */
export type Route =
  | { screen: 'opening' }
  | { screen: 'start' }
  | { screen: BatchScreen; batch: string }
  | { screen: 'settings' }
  | { screen: 'help' }
  | { screen: 'safety' }
  /** Where it is opened from a batch, with the scale of its hydrometer. */
  | { screen: 'school'; division?: Division }
  | { screen: 'unknown'; address: string };

/** What can be looked at of one batch: the bench itself, and pages under its address. */
export type BatchScreen = 'batch' | BatchPage;
type BatchPage = (typeof BATCH_PAGES)[number];
const BATCH_PAGES = ['journal', 'sums', 'labels'] as const;

type Plain = 'start' | 'settings' | 'help' | 'safety';
const PLAIN: readonly Plain[] = ['start', 'settings', 'help', 'safety'];

/** Both scales, as an address writes them. */
const SCALES: Record<string, Division> = { '0.001': 10, '0.002': 20 };

/** The route that an address names. What is not an address of ours is kept, so that it can be told. */
export function routeOf(hash: string): Route {
  const address = hash.replace(/^#?\/?/, '').replace(/\/$/, '');
  if (address === '') return { screen: 'opening' };
  const plain = PLAIN.find((screen) => screen === address);
  if (plain) return { screen: plain };
  const [inSchool, scale = ''] = /^school(?:\/(0\.00[12]))?$/.exec(address) ?? [];
  const division = SCALES[scale];
  if (inSchool !== undefined) return { screen: 'school', ...(division ? { division } : {}) };
  const [, batch, page] = /^batch\/([^/]+)(?:\/([^/]+))?$/.exec(address) ?? [];
  const screen = page === undefined ? 'batch' : BATCH_PAGES.find((each) => each === page);
  return batch !== undefined && screen ? { screen, batch } : { screen: 'unknown', address };
}

/** The address of a route. */
export function addressOf(route: Exclude<Route, { screen: 'unknown' }>): string {
  if (route.screen === 'opening') return '#/';
  if (route.screen === 'school' && route.division) return `#/school/${scaleOf(route.division)}`;
  if (!('batch' in route)) return `#/${route.screen}`;
  return route.screen === 'batch' ? `#/batch/${route.batch}` : `#/batch/${route.batch}/${route.screen}`;
}

const scaleOf = (division: Division): string =>
  Object.keys(SCALES).find((scale) => SCALES[scale] === division) ?? '';
