import { describe, expect, test } from 'vitest';
import { before, benchOf } from '../../../tests/story/bench.svelte';
import type { Gravity } from '../../domain/gravity';

describe('the measuring coach', () => {
  test('has a line for each movement of the hands, in their order', () => {
    const { getAllByRole } = benchOf(before('read start 1'));
    expect(getAllByRole('listitem').map((item) => item.querySelector('summary')?.textContent)).toEqual([
      'In water it shows what it should. Nothing is taken off.',
      'Temperature first.',
      'Shake the gas out.',
      'Spin it, clear of the wall.',
      'Read at eye level, at the flat of the surface.',
    ]);
  });

  test('says what the hydrometer is off by', () => {
    const maker = before('check hydrometer 1');
    maker.report({
      type: 'instrument checked',
      how: 'touch',
      act: 'check hydrometer 1',
      division: 10,
      calibratedAt: 20,
      waterReading: 10_020 as Gravity,
      waterCelsius: 20 as never,
    });
    const { getByText } = benchOf(before('read start 1', maker));
    expect(
      getByText('In water it shows 0.002 too much. That is taken off every reading.'),
    ).toBeInTheDocument();
  });

  test('tells how and why beneath each', async () => {
    const { user, getByText } = benchOf(before('read start 1'));
    await user.click(getByText('Shake the gas out.'));
    expect(getByText(/Again, until nothing hisses/)).toBeVisible();
  });

  test('is at hand, folded, while a reading is typed', async () => {
    const { press, getByText } = benchOf(before('read start 1'));
    await press('new reading');
    expect(getByText('How to read it').closest('details')).toContainElement(getByText('Temperature first.'));
  });
});

test('a reading that jumped is asked once more, with the number, before it counts', async () => {
  const maker = before('read on the way 1').wait(24);
  maker.read();
  const { press, type, getAllByRole, user, heading, reports, getByText } = benchOf(maker.wait(1));
  await press('new reading');
  await type('Warmth of the sample', '20');
  await type('What the hydrometer shows', '1.040');
  await type('Warmth of the wine itself', '21');
  for (const yes of getAllByRole('radio', { name: 'Yes' })) await user.click(yes);
  await press('read it back');
  await press('yes it is');
  expect(heading()).toMatch(/lower than the last. Is it right\?$/);
  expect(getByText(/Look again before you say yes/)).toBeInTheDocument();
  expect(maker.facts.readings.length).toBe(2);
  await press('yes it is');
  expect(reports.at(-1)).toMatchObject({ type: 'reading taken', reading: 10_400, confirmed: true });
});
