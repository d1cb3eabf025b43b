import { describe, expect, test } from 'vitest';
import { before, benchOf } from '../../../tests/story/bench.svelte';

const WHY = 'It gives me a headache';

describe('leaving a sachet out', () => {
  const sorbate = () => benchOf(before('add sachet sorbate'));

  test('says what follows from it, and the limit it is held to from then on', async () => {
    const { heed, press, heading, getByText } = sorbate();
    await heed();
    await press('leave out “Potassium sorbate, stabiliser”');
    expect(heading()).toBe('Leave a sachet out');
    expect(getByText(/nothing sweet goes in.* 0\.996 or lower/)).toBeInTheDocument();
  });

  test.each(['', 'x'])('wants a reason: “%s” is none, and stays', async (reason) => {
    const { heed, press, type, reports, getByLabelText } = sorbate();
    await heed();
    await press(/^leave out/);
    if (reason) await type('Why leave it out?', reason);
    await press('leave it out for good');
    expect(getByLabelText('Why leave it out?')).toHaveAccessibleDescription(
      /needs a reason in your own words/,
    );
    expect(getByLabelText('Why leave it out?')).toHaveValue(reason);
    expect(reports).toEqual([]);
  });

  test('with a reason is kept, and the procedure goes on without it', async () => {
    const { heed, press, type, reports, heading } = sorbate();
    await heed();
    const asked = heading();
    await press(/^leave out/);
    await type('Why leave it out?', WHY);
    await press('leave it out for good');
    expect(reports).toEqual([{ type: 'left out', how: 'touch', sachet: 'sorbate', reason: WHY }]);
    expect(heading()).not.toBe(asked);
  });

  test('is for sachets that were not found, too', () => {
    const maker = before('lay out sachets 1');
    maker.report({
      type: 'sachets accounted',
      how: 'touch',
      act: 'lay out sachets 1',
      missing: ['Wine yeast', 'Finings, fish'],
    });
    const { getByRole, queryByRole } = benchOf(maker);
    expect(getByRole('button', { name: 'leave out “Finings, fish”' })).toBeInTheDocument();
    expect(queryByRole('button', { name: /leave out “Wine yeast”/ })).not.toBeInTheDocument();
  });

  test('is never for the yeast', async () => {
    const { heed, queryByRole } = benchOf(before('add sachet yeast'));
    await heed();
    expect(queryByRole('button', { name: /leave out/ })).not.toBeInTheDocument();
  });
});
