import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { Maker } from '../../../tests/story/maker';
import { FIRST_PREFERENCES, type Preferences } from '../../domain/preferences';
import { builtInSheets } from '../../procedure/kits';
import type { KitSheet } from '../../procedure/kit-sheet';
import { en as text } from '../../text/en';
import { formatsFor } from '../../text/formats';
import { headerOf } from '../../workflow/header-of';
import SumsScreen from './SumsScreen.svelte';

const kit = (id: string): KitSheet => builtInSheets.find((sheet) => sheet.id === id)!;
const lantern = (): Maker => new Maker(kit('hedge-lantern'));

function show(maker: Maker, chosen: Partial<Preferences> = {}): void {
  const preferences = { ...FIRST_PREFERENCES, ...chosen };
  const header = headerOf(
    { id: 'one', name: 'Shelf two', begun: maker.facts.begun, freeHour: 18, sheet: maker.sheet },
    maker.snapshot,
  );
  const formats = formatsFor({ preferences, language: 'en', timeZone: 'Europe/Vienna' });
  render(SumsScreen, { props: { header, facts: maker.facts, text, formats, preferences } });
}

describe('a sum to type into', () => {
  const open = async (title: string) => {
    await userEvent.click(screen.getByText(title));
    return within(screen.getByText(title).closest('details')!);
  };
  const words = text.sums.reckoners;
  type Fields = Awaited<ReturnType<typeof open>>;
  async function fill(fields: Fields, typed: Record<string, string>): Promise<void> {
    for (const [label, value] of Object.entries(typed)) {
      const field = fields.getByLabelText(label);
      await userEvent.clear(field);
      await userEvent.type(field, value);
    }
    await userEvent.tab();
  }

  test('the last water is told as warm as it must be, and where the tap’s would land', async () => {
    show(lantern());
    const fields = await open(words.water.title);
    expect(fields.getByLabelText(words.water.target)).toHaveValue('22');
    await fill(fields, {
      [words.water.litres]: '13',
      [words.water.celsius]: '16',
      [words.water.water]: '10',
      [words.water.tap]: '10',
    });
    expect(fields.getByText(/^Pour the water at (28|29)(\.\d)? °C\.$/)).toBeInTheDocument();
    expect(fields.getByText(/^Straight from the tap it lands at 13(\.\d)? °C\.$/)).toBeInTheDocument();
    await fill(fields, { [words.water.celsius]: '3', [words.water.target]: '28' });
    expect(fields.getByText(/scalds and cracks glass/)).toBeInTheDocument();
    await fill(fields, { [words.water.water]: '2' });
    expect(fields.getByText(/^No water does it/)).toBeInTheDocument();
  });

  test('is asked and answered in the maker’s units', async () => {
    show(lantern(), { volume: 'US gallons', temperature: '°F' });
    const fields = await open(words.water.title);
    await fill(fields, {
      [words.water.litres]: '3.5',
      [words.water.celsius]: '60',
      [words.water.water]: '2.5',
      [words.water.target]: '72',
    });
    expect(fields.getByText(/^Pour the water at 8\d(\.\d)? °F\.$/)).toBeInTheDocument();
  });

  test('is refused beside the field, and what was typed stays', async () => {
    show(lantern());
    const fields = await open(words.alcohol.title);
    const field = fields.getByLabelText(words.alcohol.percent);
    await userEvent.type(field, '30');
    expect(field).not.toHaveAccessibleDescription();
    await userEvent.tab();
    expect(field).toHaveAccessibleDescription(/“30” is not between 0.1 % and 3 %\./);
    expect(field).toHaveValue('30');
    expect(fields.queryByText(/table sugar, give/)).toBeNull();
    await fill(fields, { [words.alcohol.percent]: '1' });
    expect(fields.getByText(/^0\.39 kg of table sugar/)).toBeInTheDocument();
    expect(fields.getByText(/balanced as it is/)).toBeInTheDocument();
  });

  test('topping up with water weakens it', async () => {
    show(lantern().goTo('clear'));
    const fields = await open(words.blend.title);
    const [mine, other] = fields.getAllByLabelText(words.blend.alcohol);
    expect(mine).not.toHaveValue('');
    expect(other).toHaveValue('0');
    await userEvent.clear(mine!);
    await userEvent.type(mine!, '13');
    const [litres, more] = fields.getAllByLabelText(words.blend.litres);
    await userEvent.clear(litres!);
    await userEvent.type(litres!, '22.5');
    await userEvent.type(more!, '0.5');
    expect(fields.getByText('23 litres of about 12.7 % vol.')).toBeInTheDocument();
  });

  test('gravity becomes Brix, and back', async () => {
    show(lantern());
    const fields = await open(words.convert.title);
    await fill(fields, { [words.convert.typed.gravity]: '1.0830' });
    expect(fields.getByText('20 °Brix.')).toBeInTheDocument();
    expect(fields.getByText('83 °Oechsle.')).toBeInTheDocument();
    await userEvent.click(fields.getByRole('radio', { name: '°Brix' }));
    await userEvent.type(fields.getByRole('textbox'), '20');
    expect(fields.getByText('Gravity 1.0829.')).toBeInTheDocument();
    expect(fields.getByText(/216 g in each litre/)).toBeInTheDocument();
  });

  test('weighing is told as too coarse for a gate, and refuses what is no bottle of wine', async () => {
    show(lantern().goTo('ferment'));
    const fields = await open(words.weight.title);
    expect(fields.getByText(/too coarse to pass a gate/)).toBeInTheDocument();
    await fill(fields, {
      [words.weight.empty]: '500',
      [words.weight.water]: '1250',
      [words.weight.wine]: '1246',
    });
    expect(fields.getByText(/^About 0\.99\d, give or take 0\.002\.$/)).toBeInTheDocument();
    await fill(fields, { [words.weight.wine]: '1900' });
    expect(fields.getByText(words.weight.notWine)).toBeInTheDocument();
  });

  test('sulphite is weighed, and air under the stopper measured', async () => {
    show(lantern());
    const dose = await open(words.sulphite.title);
    await fill(dose, { [words.sulphite.litres]: '23', [words.sulphite.rise]: '50' });
    expect(dose.getByText('2 g of potassium metabisulphite.')).toBeInTheDocument();
    const gap = await open(words.gap.title);
    await fill(gap, { [words.gap.bore]: '30', [words.gap.gap]: '25' });
    expect(gap.getByText('18 ml of air.')).toBeInTheDocument();
  });
});
