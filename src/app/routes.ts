/** Where in the app someone is. The address after the # says it, so that any static host will do. */
export type Route =
  | { screen: 'opening' }
  | { screen: 'start' }
  | { screen: 'batch'; batch: string }
  | { screen: 'journal'; batch: string }
  | { screen: 'sums'; batch: string }
  | { screen: 'settings' }
  | { screen: 'help' }
  | { screen: 'safety' }
  | { screen: 'school' }
  | { screen: 'unknown'; address: string };

type Plain = 'start' | 'settings' | 'help' | 'safety' | 'school';
const PLAIN: readonly Plain[] = ['start', 'settings', 'help', 'safety', 'school'];

/** The route that an address names. What is not an address of ours is kept, so that it can be told. */
export function routeOf(hash: string): Route {
  const address = hash.replace(/^#?\/?/, '').replace(/\/$/, '');
  if (address === '') return { screen: 'opening' };
  const plain = PLAIN.find((screen) => screen === address);
  if (plain) return { screen: plain };
  const [, batch, page] = /^batch\/([^/]+)(?:\/(journal|sums))?$/.exec(address) ?? [];
  if (batch === undefined) return { screen: 'unknown', address };
  return { screen: (page as 'journal' | 'sums' | undefined) ?? 'batch', batch };
}

/** The address of a route. */
export function addressOf(route: Exclude<Route, { screen: 'unknown' }>): string {
  if (route.screen === 'opening') return '#/';
  if (!('batch' in route)) return `#/${route.screen}`;
  return route.screen === 'batch' ? `#/batch/${route.batch}` : `#/batch/${route.batch}/${route.screen}`;
}
