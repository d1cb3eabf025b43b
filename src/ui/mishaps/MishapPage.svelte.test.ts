import { describe, expect, test } from 'vitest';
import { before, benchOf } from '../../../tests/story/bench.svelte';
import { en } from '../../text/en';

const { mishaps, headings, changes } = en.whatHappened;
const whatHappened = async (act = 'stir in sorbate') => {
  const page = benchOf(before(act));
  await page.press(/^something went wrong/);
  return page;
};

describe('what happened', () => {
  test('lists what can have gone wrong by now, and nothing that cannot', async () => {
    const { getByRole, queryByRole } = await whatHappened();
    expect(getByRole('button', { name: mishaps['wrong sachet'].title })).toBeInTheDocument();
    expect(queryByRole('button', { name: mishaps['closures rising'].title })).not.toBeInTheDocument();
  });

  test('says of one how to tell it, what is lost, what is not, and what to do now', async () => {
    const { press, heading, getByText } = await whatHappened();
    await press(mishaps['one of a pair'].title);
    expect(heading()).toBe(mishaps['one of a pair'].title);
    for (const { tell, lost, reversible, now } of [mishaps['one of a pair']])
      for (const line of [tell, lost, reversible, ...now]) expect(getByText(line)).toBeInTheDocument();
  });

  test('shows first what can hurt someone', async () => {
    const { press, getByText } = await whatHappened();
    await press(mishaps['hydrometer in the wine'].title);
    const [caution = ''] = mishaps['hydrometer in the wine'].cautions ?? [];
    const first = getByText(caution);
    const toDo = getByText(headings.now);
    expect(first.compareDocumentPosition(toDo) & Node.DOCUMENT_POSITION_FOLLOWING).toBeTruthy();
  });

  test('counts only after its read-back, and then says what to do', async () => {
    const page = await whatHappened();
    await page.press(mishaps['hydrometer broken'].title);
    await page.press('tell it');
    expect(page.reports).toEqual([]);
    expect(page.heading()).toContain(changes['instrument gone']);
    await page.press(/^yes it is/);
    expect(page.reports).toEqual([{ type: 'mishap told', how: 'touch', mishap: 'hydrometer broken' }]);
    expect(page.getByText(en.whatHappened.told)).toBeInTheDocument();
    await page.press('go on now');
    expect(page.heading()).not.toBe(mishaps['hydrometer broken'].title);
  });

  test('is not told after a no: what was filled in stays', async () => {
    const page = await whatHappened();
    await page.press(mishaps['wrong sachet'].title);
    await page.user.click(page.getByRole('radio', { name: 'Finings, fish' }));
    await page.press('tell it');
    await page.press(/^no it is not/);
    expect(page.reports).toEqual([]);
    expect(page.heading()).toBe(mishaps['wrong sachet'].title);
    expect(page.getByRole('radio', { name: 'Finings, fish' })).toBeChecked();
  });

  test('asks again for litres that are none, in one sentence, and keeps what was typed', async () => {
    const page = await whatHappened();
    await page.press(mishaps['foamed over'].title);
    await page.type('How many litres?', 'a bucket');
    await page.press('tell it');
    expect(page.reports).toEqual([]);
    expect(page.getByLabelText('How many litres?')).toHaveValue('a bucket');
    expect(page.getByLabelText('How many litres?')).toHaveAccessibleDescription(/a bucket/);
  });

  test('goes back to the list, and from there to the act', async () => {
    const page = await whatHappened();
    await page.press(mishaps['wrong sachet'].title);
    await page.press('not this');
    expect(page.getByRole('button', { name: mishaps['wrong sachet'].title })).toBeInTheDocument();
  });
});
