import { describe, expect, test, vi } from 'vitest';
import { before, benchOf, fruitWine } from '../../../tests/story/bench.svelte';
import { Maker } from '../../../tests/story/maker';

const bench = (act: string) => benchOf(before(act));

describe('an act', () => {
  test('says where we are, and has the focus on its words', async () => {
    const { heading, heed, getByText } = bench('pour juice 1');
    await heed();
    expect(heading()).toBe('Pour the juice into the vessel.');
    expect(document.activeElement?.textContent).toBe('Pour the juice into the vessel.');
    expect(getByText('act 4 of 8')).toBeInTheDocument();
  });

  test('is done at one press, and the next takes the focus', async () => {
    const { press, heed, reports, heading } = bench('pour juice 1');
    await heed();
    await press('that is done');
    expect(reports).toEqual([{ type: 'act done', how: 'touch', act: 'pour juice 1' }]);
    await vi.waitFor(() => expect(document.activeElement?.textContent).toBe(heading()));
    expect(heading()).not.toBe('Pour the juice into the vessel.');
  });

  test('warns on a page of its own, before anything can be answered', async () => {
    const { getByText, queryByText, queryByRole, heed } = bench('pour juice 1');
    expect(getByText('Before you start')).toBeInTheDocument();
    expect(queryByRole('button', { name: 'that is done' })).not.toBeInTheDocument();
    await heed();
    expect(queryByText('Before you start')).not.toBeInTheDocument();
    expect(queryByRole('button', { name: 'that is done' })).toBeInTheDocument();
  });

  test('shows what is said, to its last line', async () => {
    const { heed, getByRole, captions } = bench('pour juice 1');
    await heed();
    expect(getByRole('log', { name: 'What is said' })).toHaveTextContent(captions().at(-1) ?? '');
  });

  test('says whether it can be heard and whether the kept awake', () =>
    expect(bench('pour juice 1').getByRole('status', { name: 'Sound and screen' })).toHaveTextContent(
      /^muted, read along\s*kept awake$/,
    ));

  test('tells why when asked, and Escape closes it', async () => {
    const { press, heed, user, queryByRole } = bench('pour juice 1');
    await heed();
    await press('why is that');
    expect(queryByRole('heading', { name: 'Why is that?' })).toBeInTheDocument();
    await user.keyboard('{Escape}');
    expect(queryByRole('heading', { name: 'Why is that?' })).not.toBeInTheDocument();
  });

  test('shows what the instructor hung on it', () =>
    expect(benchOf(new Maker(fruitWine)).getByText(/two sorbate sachets in this box/)).toBeInTheDocument());

  test('keeps the focus where it is while seconds pass', async () => {
    const { later, heed, pad } = bench('pour juice 1');
    await heed();
    pad('why is that').focus();
    later(5);
    expect(document.activeElement).toBe(pad('why is that'));
  });
});

describe('keys', () => {
  test.each(['[Space]', '[Enter]', '[PageDown]'])('%s presses the main pad, page after page', async (key) => {
    const { user, reports } = bench('pour juice 1');
    await user.keyboard(key);
    expect(reports).toEqual([]);
    await user.keyboard(key);
    expect(reports).toEqual([{ type: 'act done', how: 'key', act: 'pour juice 1' }]);
  });

  test('numbers press the pads in their order', async () => {
    const { user, getByRole } = bench('pour juice 1');
    await user.keyboard('1');
    await user.keyboard('5');
    expect(getByRole('heading', { name: 'Why is that?' })).toBeInTheDocument();
  });

  test('typed into a field belong to the field', async () => {
    const { user, reports, type, getByLabelText } = bench('measure brim 1');
    await type(/full to the brim/, '30');
    await user.keyboard('2 ');
    expect(getByLabelText(/full to the brim/)).toHaveValue('302 ');
    expect(reports).toEqual([]);
  });

  test('never press a pad that is held', async () => {
    const { user, reports } = benchOf(tooSmall());
    await user.keyboard('[Space]');
    expect(reports).toEqual([]);
  });
});

/** A maker whose vessel holds no more than the batch. */
function tooSmall() {
  const maker = before('measure brim 1');
  maker.report({ type: 'litres measured', how: 'touch', act: 'measure brim 1', litres: 23 as never });
  return maker;
}

test('an act whose check is shut gives the reason and cannot be done', () => {
  const { queryByRole, getByText } = benchOf(tooSmall());
  expect(getByText('Held for now')).toBeInTheDocument();
  expect(getByText(/23 litres/)).toBeInTheDocument();
  expect(queryByRole('button', { name: 'that is done' })).not.toBeInTheDocument();
});

describe('an act that is not due yet', () => {
  const waiting = () => {
    const maker = before('look for life 1');
    return benchOf(maker);
  };

  test('shows what comes next, when, and what may be done meanwhile', () => {
    const { heading, getByText } = waiting();
    expect(heading()).toBe('Next, tomorrow');
    expect(getByText(/Sunday 4 May, about/)).toBeInTheDocument();
    expect(getByText(/Keep it warm and closed/)).toBeInTheDocument();
  });

  test('takes a reading at any time in ferment, and none that was cancelled', async () => {
    const { press, heading, reports } = waiting();
    await press('new reading');
    expect(heading()).toBe('A new reading');
    await press('leave this card');
    expect(heading()).toBe('Next, tomorrow');
    expect(reports).toEqual([]);
  });

  test('becomes the act when its time comes', () => {
    const { later, heading } = waiting();
    later(24 * 3600);
    expect(heading()).not.toContain('Next');
  });
});

describe('an end', () => {
  test('is folded away, wants a reason, and warns whoever goes on alone', async () => {
    const { user, reports, press, getByRole, getByLabelText, getByText, heading } = bench('pour juice 1');
    await user.click(getByText('End this batch'));
    await press('end this batch');
    expect(reports).toEqual([]);
    await user.click(getByRole('radio', { name: 'I go on without the guide' }));
    expect(getByText(/Keep it cold, upright and contained/)).toBeInTheDocument();
    await user.type(getByLabelText('Why, in your words'), 'moving house');
    await press('end this batch');
    expect(reports).toEqual([{ type: 'ended', how: 'touch', end: 'left the guide', reason: 'moving house' }]);
    expect(heading()).toBe('Went on without the guide');
  });
});

test('leaves and opens the journal', async () => {
  const { press, onleave, onjournal } = bench('pour juice 1');
  await press('all batches');
  await press('journal');
  expect([onleave.mock.calls.length, onjournal.mock.calls.length]).toEqual([1, 1]);
});
