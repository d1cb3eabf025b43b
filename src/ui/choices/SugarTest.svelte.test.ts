import { describe, expect, test } from 'vitest';
import { benchOf, fruitWine } from '../../../tests/story/bench.svelte';
import { Maker } from '../../../tests/story/maker';

/** A heavy wine: it stands at 0.999 for days, and the sheet wants 0.996. */
const heavy = () =>
  new Maker(fruitWine, { gravityOn: (day) => Math.max(0.999, 1.067 - day * 0.008), celsius: 21 }).goTo(
    'proving dry',
  );

async function tested(typed: string) {
  const page = benchOf(heavy());
  await page.press('enter a sugar test');
  await page.type('Sugar that the test shows', typed);
  await page.press('read it back');
  return page;
}

describe('a sugar test', () => {
  test.each(['lots', '-1', '301', ''])('“%s” is refused in a sentence, and stays as typed', async (typed) => {
    const page = benchOf(heavy());
    await page.press('enter a sugar test');
    if (typed) await page.type('Sugar that the test shows', typed);
    await page.press('read it back');
    const field = page.getByLabelText('Sugar that the test shows');
    expect(field).toHaveValue(typed);
    expect(field).toHaveAccessibleDescription(/is not between 0 and 300 grams/);
    expect(page.reports).toEqual([]);
  });

  test('is asked back, and counts only when it is right', async () => {
    const { heading, press, reports, getByLabelText } = await tested('1,5');
    expect(heading()).toBe('1.5 grams in a litre. Right?');
    await press('no it is not');
    expect(getByLabelText('Sugar that the test shows')).toHaveValue('1,5');
    await press('read it back');
    await press('yes it is');
    expect(reports).toEqual([{ type: 'sugar tested', how: 'touch', gramsPerLitre: 1.5 }]);
  });

  test('that shows the wine dry opens the limit, and says so at the gate', async () => {
    const { heading, press, getByText } = await tested('2');
    await press('yes it is');
    expect(heading()).toBe('It is finished.');
    expect(getByText(/that counts as dry, whatever the limit says/)).toBeInTheDocument();
  });

  test('that finds more opens nothing', async () => {
    const { heading, press, getByText } = await tested('6');
    await press('yes it is');
    expect(heading()).toBe('Not yet.');
    expect(getByText(/more than the 2 grams that count as dry/)).toBeInTheDocument();
  });
});
