import { describe, expect, test } from 'vitest';
import { before, benchOf, fruitWine } from '../../../tests/story/bench.svelte';
import { Maker } from '../../../tests/story/maker';

const bench = (act: string) => benchOf(before(act));

describe('a sachet', () => {
  test('is in only after a yes to its printed name', async () => {
    const { press, reports, heading } = bench('add sachet sorbate');
    await press('that is done');
    expect(heading()).toBe('Say the name on the sachet: “Potassium sorbate, stabiliser”. Right?');
    expect(reports).toEqual([]);
    await press('yes it is');
    expect(reports).toEqual([{ type: 'act done', how: 'touch', act: 'add sachet sorbate' }]);
  });

  test.each(['no it is not', 'Escape'])('is not in after %s', async (answer) => {
    const { press, user, reports, queryByText } = bench('add sachet sorbate');
    await press('that is done');
    await (answer === 'Escape' ? user.keyboard('{Escape}') : press(answer));
    expect(reports).toEqual([]);
    expect(queryByText(/Say the name/)).not.toBeInTheDocument();
  });

  test('is not let in by the space bar alone', async () => {
    const { user, reports } = bench('add sachet sorbate');
    await user.keyboard('[Space]');
    await user.keyboard('[Space]');
    await user.keyboard('[Enter]');
    expect(reports).toEqual([]);
  });

  test('says how many, what is in it and whom it can harm', () => {
    const { getByText } = bench('add sachet sulphite');
    expect(getByText('one sachet · sulphite')).toBeInTheDocument();
    expect(getByText('allergen: sulphite')).toBeInTheDocument();
  });
});

test('bottles filled and closed are asked back too', async () => {
  const { press, reports, heading } = bench('fill and close 1');
  await press('that is done');
  expect(heading()).toMatch(/cannot be taken back. Right\?$/);
  expect(reports).toEqual([]);
});

describe('the clock of a stir', () => {
  test('starts, turns, is held, and goes on', async () => {
    const { press, later, getByRole, getByText, reports } = bench('stir out gas 1');
    await press('start the clock');
    later(42);
    expect(getByRole('timer')).toHaveTextContent('4:18');
    expect(getByText('Now the other way round.')).toBeInTheDocument();
    expect(getByText('Next turn in 18 seconds.')).toBeInTheDocument();
    await press('wait a moment');
    later(60);
    expect(getByRole('timer')).toHaveTextContent('4:18');
    await press('go on now');
    expect(reports.map(({ type }) => type)).toEqual(['clock started', 'clock paused', 'clock resumed']);
  });

  test('says how late it is, takes one more minute, and is finished', async () => {
    const { press, later, getByText, getByRole, reports } = bench('stir out gas 1');
    await press('start the clock');
    later(300 + 240);
    expect(getByText('Time was up 4 minutes ago.')).toBeInTheDocument();
    await press('one more minute');
    expect(getByRole('timer')).toHaveTextContent('1:00');
    later(60);
    await press('finish stirring');
    expect(reports.at(-1)).toEqual({ type: 'act done', how: 'touch', act: 'stir out gas 1' });
  });
});

test('a wait by the clock cannot be ended before its time', async () => {
  const { press, later, queryByRole, pad } = bench('sanitiser contact 1');
  await press('start the clock');
  later(599);
  expect(queryByRole('button', { name: 'that is done' })).not.toBeInTheDocument();
  later(1);
  expect(pad('that is done')).toBeEnabled();
});

describe('a reading', () => {
  const fill = async (reading: string) => {
    const page = bench('read start 1');
    await page.type('Warmth of the sample', '24');
    await page.type('What the hydrometer shows', reading);
    await page.type('Warmth of the wine itself', '21,5');
    for (const yes of page.getAllByRole('radio', { name: 'Yes' })) await page.user.click(yes);
    await page.press('read it back');
    return page;
  };

  test.each(['996', '0.996', '0,996'])(
    '%s is understood, read back and corrected before it counts',
    async (typed) => {
      const { heading, getByText, reports, press } = await fill(typed);
      expect(heading()).toBe('0.996. Right?');
      expect(getByText('“zero point nine nine six”')).toBeInTheDocument();
      expect(getByText(/^0.996 read at 24 °C is 0.996\d at 20 °C.$/)).toBeInTheDocument();
      expect(reports).toEqual([]);
      await press('yes it is');
      expect(reports).toEqual([
        {
          type: 'reading taken',
          how: 'touch',
          act: 'read start 1',
          reading: 9960,
          sampleCelsius: 24,
          wineCelsius: 21.5,
          degassed: true,
          returned: true,
        },
      ]);
    },
  );

  test.each(['0.9', '1.3', 'about one'])(
    '%s is refused in a sentence, and what was typed stays',
    async (typed) => {
      const { getByLabelText, reports } = await fill(typed);
      const field = getByLabelText('What the hydrometer shows');
      expect(field).toHaveValue(typed);
      expect(field).toHaveAccessibleDescription(new RegExp(typed.replace('.', '\\.')));
      expect(reports).toEqual([]);
    },
  );

  test('answered with no comes back as it was typed', async () => {
    const { press, getByLabelText, reports } = await fill('0,996');
    await press('no it is not');
    expect(getByLabelText('What the hydrometer shows')).toHaveValue('0,996');
    expect(reports).toEqual([]);
  });

  test('asks for the sample’s warmth first', () => {
    const { getAllByRole, getByLabelText } = bench('read start 1');
    expect(getAllByRole('textbox')[0]).toBe(getByLabelText('Warmth of the sample'));
  });
});

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
  expect(heading()).toBe('77 °F. Right?');
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

describe('the sachets laid out', () => {
  test('count as missing where they are not ticked, after a yes', async () => {
    const { user, press, reports, heading, getByText, getAllByRole } = benchOf(new Maker(fruitWine));
    for (const tick of getAllByRole('checkbox').slice(1)) await user.click(tick);
    await press('that is done');
    expect(heading()).toBe('Not found: Bentonite, first in. Right?');
    await press('yes it is');
    expect(reports).toMatchObject([{ type: 'sachets accounted', missing: ['Bentonite, first in'] }]);
    expect(getByText('Held for now')).toBeInTheDocument();
  });

  test('are all there when all are ticked', async () => {
    const { user, press, reports, getAllByRole } = benchOf(new Maker(fruitWine));
    for (const tick of getAllByRole('checkbox')) await user.click(tick);
    await press('that is done');
    expect(reports).toEqual([
      { type: 'sachets accounted', how: 'touch', act: 'lay out sachets 1', missing: [] },
    ]);
  });
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
  expect(heading()).toBe('1.001 in water at 18 °C. Right?');
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
  const { user, type, press, reports, getByRole, heading } = bench('count bottles 1');
  await type('Bottles, sound and clean', '30');
  await type('Closures to go with them', '32');
  await user.click(getByRole('radio', { name: 'No' }));
  await press('read it back');
  expect(heading()).toBe('30 bottles and 32 closures. Right?');
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

test('what is judged has two answers, and no key that answers by habit', async () => {
  const { user, press, reports, getByText } = bench('knock the surface 1');
  expect(getByText('Did the knock raise a rush of gas?')).toBeInTheDocument();
  await user.keyboard('[Space]');
  expect(reports).toEqual([]);
  await press('No, it stayed calm');
  expect(reports).toEqual([
    { type: 'judged', how: 'touch', act: 'knock the surface 1', what: 'rush', yes: false },
  ]);
});

test('the gap below the stopper is measured and read back', async () => {
  const { type, press, reports, heading } = bench('measure gap 1');
  await type('From the wine up to the stopper', '22');
  await press('read it back');
  expect(heading()).toBe('22 millimetres. Right?');
  await press('yes it is');
  expect(reports).toEqual([{ type: 'gap measured', how: 'touch', act: 'measure gap 1', millimetres: 22 }]);
});
