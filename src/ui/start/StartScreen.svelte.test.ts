import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import type { Moment } from '../../domain/calendar';
import { FIRST_PREFERENCES, type Preferences } from '../../domain/preferences';
import { accepted } from '../../domain/result';
import type { Instant } from '../../domain/unit';
import { builtInSheets } from '../../procedure/kits';
import type { KitSheet } from '../../procedure/kit-sheet';
import { en as text } from '../../text/en';
import { formatsFor } from '../../text/formats';
import StartScreen from './StartScreen.svelte';

const NOW: Moment = { at: Date.UTC(2031, 4, 3, 15) as Instant, offsetMinutes: 120 };
const lightFruit = builtInSheets[0]!;

function show({ preferences = FIRST_PREFERENCES, file }: { preferences?: Preferences; file?: string } = {}) {
  const formats = formatsFor({ preferences, language: 'en', timeZone: 'Europe/Vienna' });
  const asked = {
    onpick: vi.fn(() => Promise.resolve(file === undefined ? undefined : accepted(file))),
    onkeep: vi.fn<(sheet: KitSheet) => void>(),
    onbegin: vi.fn(() => Promise.resolve(undefined)),
  };
  render(StartScreen, { builtIn: builtInSheets, now: NOW, text, formats, preferences, ...asked });
  return asked;
}
const choose = (name: RegExp) => userEvent.click(screen.getByRole('radio', { name }));
const value = (what: string) => screen.getByText(what, { selector: 'dt' }).nextElementSibling?.textContent;
const pickFile = () => userEvent.click(screen.getByRole('button', { name: 'Use a sheet from a file' }));

describe('a chosen sheet', () => {
  test.each([
    ['Batch', '23 litres'],
    ['Gravity at the start', 'between 1.062 and 1.072'],
    ['Finished fermenting at', '0.996 or lower, in 2 readings at least 48 hours apart'],
    ['Stabilise on', 'day 12, 15 May 2031'],
    ['Bottle on', 'day 28, 31 May 2031'],
    ['Bottles', 'about 30 of 750 ml, and corks'],
  ])('promises, under “%s”, %s', async (what, promised) => {
    show();
    await choose(/Hedge Lantern/);
    expect(value(what)).toBe(promised);
  });

  test.each([
    ['US gallons', '6.1 US gallons'],
    ['imperial gallons', '5.1 imperial gallons'],
  ] as const)('speaks of %s by their full name', async (volume, litres) => {
    show({ preferences: { ...FIRST_PREFERENCES, volume } });
    await choose(/Hedge Lantern/);
    expect(value('Batch')).toBe(litres);
  });

  test('lists its sachets by their printed words, with what must go on the label', async () => {
    show();
    await choose(/Hedge Lantern/);
    const sachets = within(
      screen.getByRole('heading', { name: 'Sachets it will want' }).parentElement!,
    ).getAllByRole('listitem');
    expect(sachets).toHaveLength(lightFruit.sachets.length);
    expect(sachets[3]).toHaveTextContent('Potassium sorbate, stabiliser, 2 of them');
    expect(sachets[5]).toHaveTextContent('contains fish: it goes on the label');
  });

  test('can be kept as the file that it is', async () => {
    const { onkeep } = show();
    await choose(/Hedge Lantern/);
    await userEvent.click(screen.getByText('The sheet itself'));
    await userEvent.click(screen.getByRole('button', { name: 'Keep this sheet as a file' }));
    expect(onkeep).toHaveBeenCalledExactlyOnceWith(lightFruit);
  });
});

describe('beginning', () => {
  test('takes the sheet, the maker’s name for it and their free hour', async () => {
    const { onbegin } = show({ preferences: { ...FIRST_PREFERENCES, freeHour: 20 } });
    await choose(/Hedge Lantern/);
    const name = screen.getByRole('textbox');
    expect(name).toHaveValue('Hedge Lantern, 3 May 2031');
    await userEvent.clear(name);
    await userEvent.type(name, '  Shelf two ');
    await userEvent.selectOptions(screen.getByRole('combobox'), '07:00');
    await userEvent.click(screen.getByRole('button', { name: 'begin this batch' }));
    expect(onbegin).toHaveBeenCalledExactlyOnceWith({ sheet: lightFruit, name: 'Shelf two', freeHour: 7 });
  });

  test('waits for a name', async () => {
    const { onbegin } = show();
    await choose(/Hedge Lantern/);
    await userEvent.clear(screen.getByRole('textbox'));
    await userEvent.click(screen.getByRole('button', { name: 'begin this batch' }));
    expect(screen.getByRole('textbox')).toHaveAccessibleDescription(/Give the batch a name/);
    expect(onbegin).not.toHaveBeenCalled();
  });

  test('says why the storage refuses', async () => {
    const { onbegin } = show();
    onbegin.mockResolvedValueOnce({ code: 'storage-full' } as never);
    await choose(/Hedge Lantern/);
    await userEvent.click(screen.getByRole('button', { name: 'begin this batch' }));
    expect(await screen.findByRole('alert')).toHaveTextContent('There is no room left on this device');
  });
});

describe('a sheet from a file', () => {
  const other = { ...lightFruit, id: 'hill-barrow', name: 'Hill Barrow' };

  test('is chosen when it is sound', async () => {
    show({ file: JSON.stringify(other) });
    await pickFile();
    expect(screen.getByRole('radio', { name: /Hill Barrow/ })).toBeChecked();
    expect(screen.getByText('Hill Barrow was read and is chosen.')).toBeInTheDocument();
  });

  test('is refused with each fault’s place and value', async () => {
    const sachets = other.sachets.map((sachet) =>
      sachet.id === 'sorbate' ? { ...sachet, when: 'mix' } : sachet,
    );
    show({ file: JSON.stringify({ ...other, sachets, start: { lowest: 1.08, highest: 1.07 } }) });
    await pickFile();
    const alert = screen.getByRole('alert');
    expect(alert).toHaveTextContent('That sheet was not taken');
    expect(
      within(alert)
        .getAllByRole('listitem')
        .map(({ textContent }) => textContent),
    ).toEqual([
      'start.lowest (“1.08”): It is above the highest value, 1.07: put the lower one first.',
      'sachets.3.when (“mix”): What it holds may go in only at: stabilise.',
    ]);
    expect(screen.queryByRole('button', { name: 'begin this batch' })).toBeNull();
  });

  test.each([
    ['{ broken', 'This file is not whole'],
    ['{"format":"something else"}', 'This file is not a kit sheet'],
  ])('%s is refused in a sentence', async (file, sentence) => {
    show({ file });
    await pickFile();
    expect(screen.getByRole('alert')).toHaveTextContent(sentence);
  });

  test('that is not picked after all changes nothing', async () => {
    show();
    await pickFile();
    expect(screen.queryByRole('alert')).toBeNull();
  });
});
