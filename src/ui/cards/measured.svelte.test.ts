import { expect, test } from 'vitest';
import { before, benchOf } from '../../../tests/story/bench.svelte';

const bench = (act: string) => benchOf(before(act));

test('a must at 70 °C is refused in a sentence', async () => {
  const { type, press, getByLabelText, reports } = bench('take must temperature 1');
  await type('Warmth of the must', '70');
  await press('read it back');
  expect(getByLabelText('Warmth of the must')).toHaveAccessibleDescription(/70/);
  expect(reports).toEqual([]);
});

test('a temperature in Fahrenheit is kept in Celsius', async () => {
  const { type, press, reports, heading } = benchOf(before('take must temperature 1'), { temperature: '°F' });
  await type('Warmth of the must', '77');
  await press('read it back');
  expect(heading()).toMatch(/seventy-seven|77/i);
  await press('yes it is');
  expect(reports).toEqual([
    {
      type: 'temperature taken',
      how: 'touch',
      act: 'take must temperature 1',
      celsius: expect.closeTo(25, 10) as number,
    },
  ]);
});

test('litres are typed in the maker’s unit and kept in litres', async () => {
  const { type, press, reports, heading } = benchOf(before('measure brim 1'), { volume: 'US gallons' });
  await type(/full to the brim/, '8');
  await press('read it back');
  expect(heading()).toBe('8 US gallons. Right?');
  await press('yes it is');
  expect(reports).toEqual([
    {
      type: 'litres measured',
      how: 'touch',
      act: 'measure brim 1',
      litres: expect.closeTo(30.283, 3) as number,
    },
  ]);
});

test('the hydrometer is known by its scale, its temperature and what it shows in water', async () => {
  const { user, type, press, reports, getByRole, heading } = bench('check hydrometer 1');
  await press('read it back');
  expect(reports).toEqual([]);
  await user.click(getByRole('radio', { name: /0.002/ }));
  await user.click(getByRole('radio', { name: /15.56/ }));
  await type('Warmth of that water', '18');
  await type('What it shows in plain water', '1.001');
  await press('read it back');
  expect(heading()).toBe('One point zero zero one, in water at 18 degrees Celsius. Right?');
  await press('yes it is');
  expect(reports).toEqual([
    {
      type: 'instrument checked',
      how: 'touch',
      act: 'check hydrometer 1',
      division: 20,
      calibratedAt: 15.56,
      waterReading: 10_010,
      waterCelsius: 18,
    },
  ]);
});

test('bottles and closures are counted and read back', async () => {
  const { user, heed, type, press, reports, getByRole, heading } = bench('count bottles 1');
  await heed();
  await type('Bottles, sound and clean', '30');
  await type('Closures to go with them', '32');
  await user.click(getByRole('radio', { name: 'No' }));
  await press('read it back');
  expect(heading()).toBe('30 bottles and 32 closures, without a screw thread. Right?');
  await press('yes it is');
  expect(reports).toEqual([
    {
      type: 'bottles counted',
      how: 'touch',
      act: 'count bottles 1',
      bottles: 30,
      closures: 32,
      threaded: false,
    },
  ]);
});

test('filled bottles are counted in whole ones', async () => {
  const { user, type, press, reports, getByLabelText } = bench('count filled 1');
  await type('Bottles filled and closed', '28.5');
  await press('read it back');
  expect(getByLabelText('Bottles filled and closed')).toHaveAccessibleDescription(/28\.5/);
  await user.clear(getByLabelText('Bottles filled and closed'));
  await type('Bottles filled and closed', '28');
  await press('read it back');
  await press('yes it is');
  expect(reports).toEqual([{ type: 'filled counted', how: 'touch', act: 'count filled 1', filled: 28 }]);
});

test('the gap below the stopper is measured and read back', async () => {
  const { type, press, reports, heading } = bench('measure gap 1');
  await type('From the wine up to the stopper', '22');
  await press('read it back');
  expect(heading()).toBe('22 millimetres. Right?');
  await press('yes it is');
  expect(reports).toEqual([{ type: 'gap measured', how: 'touch', act: 'measure gap 1', millimetres: 22 }]);
});
