import { describe, expect, test } from 'vitest';
import { addressOf, routeOf, type Route } from './routes';

describe('an address', () => {
  const ADDRESSES: [address: string, route: Route][] = [
    ['', { screen: 'opening' }],
    ['#', { screen: 'opening' }],
    ['#/', { screen: 'opening' }],
    ['#/start', { screen: 'start' }],
    ['#/start/', { screen: 'start' }],
    ['#/settings', { screen: 'settings' }],
    ['#/help', { screen: 'help' }],
    ['#/safety', { screen: 'safety' }],
    ['#/school', { screen: 'school' }],
    ['#/school/0.001', { screen: 'school', division: 10 }],
    ['#/school/0.002', { screen: 'school', division: 20 }],
    ['#/batch/k3-9', { screen: 'batch', batch: 'k3-9' }],
    ['#/batch/k3-9/journal', { screen: 'journal', batch: 'k3-9' }],
    ['#/batch/k3-9/sums', { screen: 'sums', batch: 'k3-9' }],
    ['#/batch/k3-9/labels', { screen: 'labels', batch: 'k3-9' }],
  ];
  test.each(ADDRESSES)('%s names its screen', (address, route) => expect(routeOf(address)).toEqual(route));

  test.each([
    '#/cellar',
    '#/batch',
    '#/batch/',
    '#/batch/a/b',
    '#/batch/a/journal/2',
    '#/batch/a/sums/2',
    '#/settings/x',
    '#/school/0.003',
  ])('%s is nobody’s, and is kept to be told', (address) =>
    expect(routeOf(address)).toEqual({ screen: 'unknown', address: address.replace(/^#\/|\/$/g, '') }),
  );

  test.each(ADDRESSES.filter(([address]) => /^#\/(.*[^/])?$/.test(address)))(
    '%s is what its route is called',
    (address, route) => expect(route.screen === 'unknown' ? undefined : addressOf(route)).toBe(address),
  );
});
