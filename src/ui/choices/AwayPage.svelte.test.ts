import { fireEvent } from '@testing-library/svelte';
import { describe, expect, test } from 'vitest';
import { before, benchOf } from '../../../tests/story/bench.svelte';
import type { Maker } from '../../../tests/story/maker';
import { MINUTE } from '../../domain/calendar';
import { dayIn } from './absence';

/** Day 5, after its reading: the next falls due on day 10. */
function fermenting(): Maker {
  const maker = before('read on the way 1');
  maker.answer();
  return maker;
}

async function planned(maker: Maker, fromDays: number, untilDays: number) {
  const page = benchOf(maker);
  await page.press('I am away for a while');
  const day = (days: number) =>
    dayIn({ ...maker.now, at: (maker.now.at + days * 24 * 60 * MINUTE) as never });
  await fireEvent.input(page.getByLabelText('Away from'), { target: { value: day(fromDays) } });
  await fireEvent.input(page.getByLabelText('Back on'), { target: { value: day(untilDays) } });
  return page;
}

describe('I am away', () => {
  test('says how long the wine can wait where it stands', async () => {
    const { press, heading, getByText } = benchOf(fermenting());
    await press('I am away for a while');
    expect(heading()).toBe('I am away');
    expect(getByText('Where it stands now it can be left alone for 14 days, usually.')).toBeInTheDocument();
  });

  test('says what to do before leaving, what is moved, and what is asked on return', async () => {
    const { getByText } = await planned(fermenting(), 2, 9);
    expect(getByText(/^The next act is moved to Saturday 17 May, about/)).toBeInTheDocument();
    expect(getByText(/Fill the airlock with fresh water/)).toBeInTheDocument();
    expect(getByText(/On your return: take a reading first/)).toBeInTheDocument();
  });

  test('is written down, and the bench waits for the day of return', async () => {
    const { press, reports, heading, getByText } = await planned(fermenting(), 2, 9);
    await press('plan it so');
    expect(reports).toMatchObject([{ type: 'away planned', how: 'touch' }]);
    expect(heading()).toBe('Next, in 9 days');
    expect(getByText(/^Away from 10 May 2031 until 17 May 2031\.$/)).toBeInTheDocument();
  });

  test('is refused where it is not safe, in a sentence, and the days stay as they were', async () => {
    const { pad, getByText, reports, user, getByLabelText } = await planned(fermenting(), 1, 20);
    expect(getByText(/A ferment may be left for 14 days/)).toBeInTheDocument();
    expect(pad('plan it so')).toBeDisabled();
    await user.keyboard(' ');
    expect([reports, (getByLabelText('Back on') as HTMLInputElement).value]).toEqual([[], '2031-05-28']);
  });

  test('is refused between the yeast and day 3', async () => {
    const { getByText } = await planned(before('look for life 1'), 0, 2);
    expect(getByText(/Until day 3 after the yeast somebody must see it start/)).toBeInTheDocument();
  });

  test('wants both days', async () => {
    const { press, getByLabelText, reports } = benchOf(fermenting());
    await press('I am away for a while');
    await press('plan it so');
    expect(getByLabelText('Away from')).toHaveAccessibleDescription(/Choose both days/);
    expect(reports).toEqual([]);
  });

  test('is there while the guide holds still', async () => {
    const { press, heading, getByText } = benchOf(before('leave to clear 1'));
    await press('wait a moment');
    await press('I am away for a while');
    expect(heading()).toBe('I am away');
    expect(getByText(/it can be left alone for 42 days/)).toBeInTheDocument();
    await press('do not plan it');
    expect(heading()).not.toBe('I am away');
  });
});
