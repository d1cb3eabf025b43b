import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { headerFor } from '../../../tests/story/header';
import { Maker } from '../../../tests/story/maker';
import { FIRST_PREFERENCES, type Preferences } from '../../domain/preferences';
import type { Celsius } from '../../domain/unit';
import { builtInSheets } from '../../procedure/kits';
import type { KitSheet } from '../../procedure/kit-sheet';
import { en as text } from '../../text/en';
import { formatsFor } from '../../text/formats';
import SumsScreen from './SumsScreen.svelte';

const kit = (id: string): KitSheet => builtInSheets.find((sheet) => sheet.id === id)!;
const lantern = (): Maker => new Maker(kit('hedge-lantern'));

function show(maker: Maker, chosen: Partial<Preferences> = {}): void {
  const preferences = { ...FIRST_PREFERENCES, ...chosen };
  const header = headerFor(maker);
  const formats = formatsFor({ preferences, language: 'en', timeZone: 'Europe/Vienna' });
  render(SumsScreen, { props: { header, facts: maker.facts, text, formats, preferences } });
}
const section = (name: string) => screen.getByRole('heading', { name, level: 2 }).closest('section')!;
const said = (name: string): string => section(name).textContent.replace(/\s+/g, ' ');

describe('the sums of a batch', () => {
  test('say what is missing before anything was read', () => {
    show(lantern());
    expect(said('In the vessel')).toContain('Nothing is measured yet.');
    expect(said('Alcohol and sugar')).toContain('There is no start gravity yet.');
    expect(said('How it will go on')).toContain('A forecast begins with the yeast.');
    expect(said('Sulphite and sorbate')).toContain('No masses are printed');
  });

  test('hold the ledger: litres, weight, bottles and corks', () => {
    show(lantern().goTo('pitch'));
    expect(said('In the vessel')).toMatch(
      /23 litres now\. .* weighs about 24 kg.* Plan for 30 bottles, give or take one, and 32 corks\./,
    );
  });

  test('give the alcohol with its uncertainty, and the simple rule beside it', () => {
    show(lantern().goTo('stabilise'));
    expect(said('Alcohol and sugar')).toMatch(
      /From 1\.067 to 0\.994: about 9\.\d % vol, give or take 0\.[34] of alcohol\./,
    );
    expect(said('Alcohol and sugar')).toContain('131.25 times the fall for comparison: 9.6.');
    expect(said('Alcohol and sugar')).toMatch(
      /Sugar that yeast could still take: at most \d+ g in each litre/,
    );
    expect(said('How it will go on')).toContain('Fermentation is proven over');
  });

  test('forecast in days and dates, and warn of the cold', () => {
    const maker = lantern()
      .goTo('ferment')
      .wait(4 * 24);
    maker.read({ wineCelsius: 14 as Celsius });
    show(maker);
    expect(said('How it will go on')).toMatch(/The limit of 0\.996: .*day \d+ \(\d+ May 2031\)/);
    expect(said('How it will go on')).toMatch(/The wine was 14 °C at the last reading; 18 °C is wanted/);
    expect(said('How it will go on')).toContain('A forecast opens nothing: only your readings do.');
    expect(said('Alcohol and sugar')).toContain('more than your scale can mistake');
  });

  test('speak of additives only by printed masses, at an acidity that is assumed until it is typed', async () => {
    show(new Maker(kit('chalk-meadow')).goTo('stabilise'));
    expect(said('Sulphite and sorbate')).toMatch(/bring \d+ mg of sulphur dioxide to each litre/);
    expect(said('Sulphite and sorbate')).toContain('(the pH is assumed)');
    expect(said('Sulphite and sorbate')).not.toContain('sorbic acid');
    await userEvent.type(screen.getByLabelText(text.sums.additives.pH), '3,3');
    expect(said('Sulphite and sorbate')).not.toContain('(the pH is assumed)');
  });

  test('judge printed sorbate at both ends of what is assumed', () => {
    const sheet = kit('hedge-lantern');
    const sachets = sheet.sachets.map((sachet) =>
      sachet.id === 'sorbate' ? { ...sachet, grams: 3 } : sachet,
    );
    show(new Maker({ ...sheet, start: { lowest: 1.09, highest: 1.1 }, sachets }).goTo('stabilise'));
    expect(said('Sulphite and sorbate')).toMatch(/bring 2\d\d mg of sorbic acid/);
    expect(said('Sulphite and sorbate')).toMatch(/At pH 3\.2 that is enough.*At pH 3\.6 no table says/);
    expect(said('Sulphite and sorbate')).toContain('more than the OIV and the European Union would allow');
  });

  test('every place of a batch has sums without a hole in them', () => {
    const maker = lantern();
    for (const place of ['mix', 'ferment', 'fine', 'clear', 'finished'] as const) {
      show(maker.goTo(place));
      expect(document.body.textContent).not.toMatch(/undefined|NaN|\[object|Infinity/);
      document.body.replaceChildren();
    }
  });
});
