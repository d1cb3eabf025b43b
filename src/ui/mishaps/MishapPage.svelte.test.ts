import { describe, expect, test } from 'vitest';
import { before, benchOf } from '../../../tests/story/bench.svelte';
import { en } from '../../text/en';

const { mishaps, headings, changes, takeBack } = en.whatHappened;
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

  test('says where telling it leads, once its sachet is chosen', async () => {
    const page = await whatHappened('take wine temperature 1');
    await page.press(mishaps['sachet still full'].title);
    expect(page.queryByText(/The batch (stays|goes back)/)).not.toBeInTheDocument();
    await page.user.click(page.getByRole('radio', { name: 'Bentonite, first in' }));
    expect(page.getByText(/The batch stays where it is\./)).toBeInTheDocument();
    await page.user.click(page.getByRole('radio', { name: 'Metabisulphite' }));
    expect(page.getByText(/the batch goes back to “Is it finished\?”/)).toBeInTheDocument();
  });

  test('shows the airlock where it is about the airlock, and no picture elsewhere', async () => {
    const page = await whatHappened('read towards dry 1');
    await page.press(mishaps['airlock dry'].title);
    expect(page.getByRole('img', { name: /^Three airlocks/ })).toBeInTheDocument();
    await page.press('not this');
    await page.press(mishaps['wine spilled'].title);
    expect(page.queryByRole('img', { name: /^Three airlocks/ })).toBeNull();
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

  const sweetenedTooEarly = () => {
    const maker = before('stir in sorbate');
    maker.report({ type: 'mishap told', how: 'touch', mishap: 'sweetening too early' });
    return maker.wait(25);
  };

  test.each([
    ['forgot bentonite', () => before('stir in sorbate'), 'Bentonite, first in', 'bentonite'],
    ['sweetening too early', sweetenedTooEarly, 'Fruit sweetening pack', 'sweetening'],
  ] as const)(
    '%s, though its sachet is in, leads to one that is still full',
    async (mishap, maker, name, sachet) => {
      const page = benchOf(maker());
      await page.press(/^something went wrong/);
      await page.press(mishaps[mishap].title);
      await page.press('tell it');
      await page.press(/^yes it is/);
      expect(page.getAllByRole('alert')[0]).toHaveTextContent(`The journal has “${name}” in the wine since`);
      await page.press(en.wrappers.tooFew.which(name));
      expect(page.heading()).toBe(mishaps['sachet still full'].title);
      expect(page.queryByRole('alert')).not.toBeInTheDocument();
      expect(page.getByRole('radio', { name })).toBeChecked();
      await page.press('tell it');
      await page.press(/^yes it is/);
      expect(page.reports.at(-1)).toEqual({
        type: 'mishap told',
        how: 'touch',
        mishap: 'sachet still full',
        sachet,
      });
      expect(page.getByText(en.whatHappened.told)).toBeInTheDocument();
    },
  );

  test('told by mistake is taken back at once, with a reason', async () => {
    const page = await whatHappened();
    await page.press(mishaps['hydrometer in the wine'].title);
    await page.press('tell it');
    await page.press(/^yes it is/);
    await page.press(takeBack.confirm);
    expect(page.reports).toHaveLength(1);
    await page.type(takeBack.reason, 'every piece lay on the floor');
    await page.press(takeBack.confirm);
    expect(page.reports.at(-1)).toMatchObject({
      type: 'mishap struck',
      reason: 'every piece lay on the floor',
    });
    expect(page.heading()).toMatch(/^Stir/);
  });

  test('that changed the wine is not taken back', async () => {
    const page = await whatHappened();
    await page.press(mishaps['wine spilled'].title);
    await page.type('How many litres?', '1');
    await page.press('tell it');
    await page.press(/^yes it is/);
    expect(page.getByText(en.whatHappened.told)).toBeInTheDocument();
    expect(page.queryByText(takeBack.title)).not.toBeInTheDocument();
  });

  test('goes back to the list, and from there to the act', async () => {
    const page = await whatHappened();
    await page.press(mishaps['wrong sachet'].title);
    await page.press('not this');
    expect(page.getByRole('button', { name: mishaps['wrong sachet'].title })).toBeInTheDocument();
  });
});
