/** Where in the app someone is. The address after the # says it, so that any static host will do. */
export type Route =
  | { screen: 'opening' }
  | { screen: 'start' }
  | { screen: 'batch'; batch: string }
  | { screen: 'journal'; batch: string }
  | { screen: 'settings' }
  | { screen: 'help' }
  | { screen: 'safety' }
  | { screen: 'unknown'; address: string };

type Plain = 'start' | 'settings' | 'help' | 'safety';
const PLAIN: readonly Plain[] = ['start', 'settings', 'help', 'safety'];

/** The route that an address names. What is not an address of ours is kept, so that it can be told. */
export function routeOf(hash: string): Route {
  const address = hash.replace(/^#?\/?/, '').replace(/\/$/, '');
  if (address === '') return { screen: 'opening' };
  const plain = PLAIN.find((screen) => screen === address);
  if (plain) return { screen: plain };
  const [, batch, journal] = /^batch\/([^/]+)(\/journal)?$/.exec(address) ?? [];
  if (batch === undefined) return { screen: 'unknown', address };
  return { screen: journal ? 'journal' : 'batch', batch };
}

/** The address of a route. */
export function addressOf(route: Exclude<Route, { screen: 'unknown' }>): string {
  if (route.screen === 'opening') return '#/';
  if (route.screen === 'batch') return `#/batch/${route.batch}`;
  return route.screen === 'journal' ? `#/batch/${route.batch}/journal` : `#/${route.screen}`;
}
