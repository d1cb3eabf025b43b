import { describe, expect, test } from 'vitest';
import { before, benchOf } from '../../../tests/story/bench.svelte';

const bench = (act: string) => benchOf(before(act));

describe('a reading', () => {
  const fill = async (reading: string) => {
    const page = bench('read start 1');
    await page.press('new reading');
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

  test('asks for the sample’s warmth first', async () => {
    const { press, getAllByRole, getByLabelText } = bench('read start 1');
    await press('new reading');
    expect(getAllByRole('textbox')[0]).toBe(getByLabelText('Warmth of the sample'));
  });
});
