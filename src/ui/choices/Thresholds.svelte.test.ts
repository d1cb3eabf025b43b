import { within } from '@testing-library/svelte';
import { expect, test } from 'vitest';
import { benchOf, fruitWine } from '../../../tests/story/bench.svelte';
import { Maker } from '../../../tests/story/maker';
import type { KitSheet } from '../../procedure/kit-sheet';

function numbers(sheet: KitSheet) {
  const region = benchOf(new Maker(sheet).goTo('proving dry')).getByRole('region', {
    name: 'What it is judged by',
  });
  const said = (label: string) =>
    within(region).getByText(label).nextElementSibling?.textContent.replace(/\s+/g, ' ').trim();
  return said;
}

test('each number of a gate says whether it is the house’s or the sheet’s, and where on the sheet', () => {
  const said = numbers(fruitWine);
  expect([said('Finished at'), said('Not before'), said('What your scale can tell apart')]).toEqual([
    '0.996 or lower: your sheet (leaflet, page 4) The house alone asks for 1.000 or lower. The stricter counts: your sheet (leaflet, page 4).',
    'day 12: your sheet (leaflet, page 3)',
    'more than 0.0012: the house rule',
  ]);
});

test('a sheet that is laxer is overruled, and it says so', () => {
  const said = numbers({ ...fruitWine, dry: { ...fruitWine.dry, hoursApart: 24 } });
  expect(said('From the first to the last')).toBe(
    '48 hours or more: the house rule Your sheet alone asks for 24 hours or more. The stricter counts: the house rule.',
  );
});
