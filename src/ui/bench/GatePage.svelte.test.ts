import { describe, expect, test } from 'vitest';
import type { Gravity } from '../../domain/gravity';
import type { Celsius } from '../../domain/unit';
import { benchOf, fruitWine } from '../../../tests/story/bench.svelte';
import { Maker } from '../../../tests/story/maker';

const finished = () => new Maker(fruitWine).goTo('proving dry');

/** The last reading is one of a wine that still ferments. */
function fermenting() {
  const maker = finished();
  maker.wait(1).read({ reading: 10_100 as Gravity });
  return maker;
}

describe('a shut gate', () => {
  test('says not yet, the reason, the earliest time, and what to do tonight', () => {
    const { heading, getByText } = benchOf(fermenting());
    expect(heading()).toBe('Not yet.');
    expect(getByText(/The wine reads 1.010/)).toBeInTheDocument();
    expect(getByText('Earliest').nextElementSibling?.textContent.trim()).toMatch(
      /^\w+day \d+ May, about \d\d:\d\d$/,
    );
    expect(getByText('Tonight').nextElementSibling).toHaveTextContent(/No stabiliser/);
  });

  test('lists every other clause that fails', () =>
    expect(
      benchOf(fermenting()).getByText('Also').nextElementSibling?.querySelectorAll('li').length,
    ).toBeGreaterThan(0));

  test('cannot be gone through, by press or by key', async () => {
    const { pad, user, reports } = benchOf(fermenting());
    expect(pad('go on now')).toBeDisabled();
    await user.keyboard('2');
    expect(reports).toEqual([]);
  });

  test('draws the readings and says of each how it counts', () => {
    const maker = fermenting();
    maker.wait(1).read({ wineCelsius: 15 as Celsius });
    const { getByRole, getByText } = benchOf(maker);
    expect(getByRole('img', { name: /Number line with 6 readings/ })).toBeInTheDocument();
    expect(getByText(/not counted: the wine was cold/)).toBeInTheDocument();
  });

  test('draws what would be in a bottle beside what it is meant for, and says the same', () => {
    const { getByRole, getAllByText, getByText } = benchOf(fermenting());
    const drawn = getByRole('img', { name: /A bottle for still wine is meant for 0\.5 bar/ });
    expect(getByText('this wine in it, at 30 °C')).toBeInTheDocument();
    const widths = [...drawn.querySelectorAll('rect.meant, rect.sure')].map((bar) =>
      Number(bar.getAttribute('width')),
    );
    const [meant = 0, at20 = 0, at30 = 0] = widths;
    expect(at20).toBeGreaterThan(meant);
    expect(at30).toBeGreaterThan(at20);
    expect(getAllByText(drawn.getAttribute('aria-label') ?? '')).not.toEqual([]);
  });

  test('of a dry wine draws nothing of bottles', () => {
    const { queryByRole } = benchOf(finished());
    expect(queryByRole('img', { name: /meant for/ })).not.toBeInTheDocument();
  });
});

describe('an open gate', () => {
  test('says so, and goes on', async () => {
    const { heading, press, reports } = benchOf(finished());
    expect(heading()).toBe('It is finished.');
    await press('go on now');
    expect(reports).toEqual([{ type: 'gate passed', how: 'touch', gate: 'proving dry' }]);
    expect(heading()).not.toBe('It is finished.');
  });

  test('is the space bar’s', async () => {
    const { user, reports } = benchOf(finished());
    await user.keyboard('[Space]');
    expect(reports).toMatchObject([{ type: 'gate passed', how: 'key' }]);
  });
});

describe('a reading that was wrong', () => {
  test('is struck with a typed reason, and never without one', async () => {
    const maker = fermenting();
    const { entry } = maker.facts.readings.at(-1)!;
    const { press, type, reports, heading, getByText } = benchOf(maker);
    await press(/That reading was wrong: 1.010/);
    await press('strike this reading');
    expect(reports).toEqual([]);
    await type('What was wrong with it?', 'another jar');
    await press('strike this reading');
    expect(reports).toEqual([{ type: 'reading struck', how: 'touch', entry, reason: 'another jar' }]);
    expect(getByText(/struck: it was wrong/)).toBeInTheDocument();
    expect(heading()).toBe('It is finished.');
  });
});

describe('a new reading at the gate', () => {
  const reading = async (typed: string) => {
    const page = benchOf(finished());
    await page.press('new reading');
    await page.type('Warmth of the sample', '20');
    await page.type('What the hydrometer shows', typed);
    await page.type('Warmth of the wine itself', '21');
    for (const yes of page.getAllByRole('radio', { name: 'Yes' })) await page.user.click(yes);
    await page.press('read it back');
    await page.press('yes it is');
    return page;
  };

  test('is judged as soon as it is taken, and answers no act', async () => {
    const { heading, reports } = await reading('0,994');
    expect(reports).toEqual([
      {
        type: 'reading taken',
        how: 'touch',
        reading: 9940,
        sampleCelsius: 20,
        wineCelsius: 21,
        degassed: true,
        returned: true,
      },
    ]);
    expect(heading()).toBe('It is finished.');
  });

  test('that went up is doubted, and counts only when it is confirmed', async () => {
    const { heading, press, reports } = await reading('1.004');
    expect(heading()).toMatch(/higher than the last. Is it right\?$/);
    await press('yes it is');
    expect(reports.at(-1)).toMatchObject({ type: 'reading taken', reading: 10_040, confirmed: true });
    expect(heading()).toBe('Not yet.');
  });

  test('that was doubted and denied comes back as it was typed', async () => {
    const { press, getByLabelText } = await reading('1.004');
    await press('no it is not');
    expect(getByLabelText('What the hydrometer shows')).toHaveValue('1.004');
  });
});

describe('the gas gate', () => {
  const gassy = () => new Maker(fruitWine).goTo('proving gas-free');

  test('takes shake tests and opens after two quiet ones', async () => {
    const { press, heading, getByText } = benchOf(gassy());
    expect(heading()).toBe('Not yet.');
    await press(/^No, the same or less/);
    expect(getByText('One quiet test. One more.')).toBeInTheDocument();
    await press(/^No, the same or less/);
    expect(heading()).toBe('The gas is out.');
  });

  test('offers the way back to stirring after a lively one', async () => {
    const { press, reports, queryByRole } = benchOf(gassy());
    expect(queryByRole('button', { name: /^stir out more gas/ })).not.toBeInTheDocument();
    await press(/^Yes, livelier than water/);
    await press(/^stir out more gas/);
    await press('yes it is');
    expect(reports.at(-1)).toEqual({
      type: 'sent back',
      how: 'touch',
      gate: 'proving gas-free',
      clause: 'gassy',
    });
  });
});
