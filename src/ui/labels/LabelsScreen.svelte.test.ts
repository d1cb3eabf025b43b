import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import { headerFor } from '../../../tests/story/header';
import { Maker } from '../../../tests/story/maker';
import { FIRST_PREFERENCES } from '../../domain/preferences';
import { builtInSheets } from '../../procedure/kits';
import { en as text } from '../../text/en';
import { formatsFor } from '../../text/formats';
import LabelsScreen from './LabelsScreen.svelte';

const hedge = builtInSheets.find(({ id }) => id === 'hedge-lantern')!;
const words = text.labels;

function show(maker: Maker) {
  const { facts } = maker;
  const header = headerFor(maker);
  const formats = formatsFor({ preferences: FIRST_PREFERENCES, language: 'en', timeZone: 'UTC' });
  const onprint = vi.fn();
  render(LabelsScreen, { props: { header, facts, text, formats, onprint } });
  return { onprint, filled: facts.filled };
}

const labels = () => screen.queryAllByRole('article');
const first = () => labels()[0]?.textContent.replace(/\s+/g, ' ') ?? '';

describe('the sheet of labels', () => {
  test('has one for every bottle, numbered, with what a guest must be able to read', () => {
    const { filled } = show(new Maker(hedge).goTo('label'));
    expect(labels()).toHaveLength(filled!);
    expect(first()).toContain('Shelf two');
    expect(first()).toMatch(/about 9\.\d % vol bottled \d+ \w+ 2031 let it rest until/);
    expect(first()).toContain('contains sulphite and fish');
    expect(first()).toContain(words.nth('1', String(filled)));
  });

  test('leaves the date open while there are no bottles', () => {
    show(new Maker(hedge).goTo('clear'));
    expect(screen.getByText(words.noDate)).toBeVisible();
    expect(first()).toContain(words.bottledOpen);
  });

  test('says what was decided against the sheet, with its reason', () => {
    const maker = new Maker(hedge).goTo('proving clear');
    maker.report({
      ...{ type: 'overridden', how: 'touch', question: 'proving clear' },
      ...{ clause: 'not-looked-at', reason: 'guests are coming' },
    });
    show(maker);
    expect(first()).toMatch(/not seen clear on two days\. The reason given: “guests are coming”/);
  });

  test('prints as many as are typed, and refuses what is no number of labels', async () => {
    const { onprint } = show(new Maker(hedge).goTo('label'));
    const field = screen.getByLabelText(words.count);
    await userEvent.clear(field);
    await userEvent.type(field, '6');
    expect(labels()).toHaveLength(6);
    await userEvent.click(screen.getByRole('button', { name: words.print }));
    expect(onprint).toHaveBeenCalledOnce();
    await userEvent.type(field, '00');
    expect(screen.getByText(words.wrongCount('600', '120'))).toBeVisible();
    expect(labels()).toHaveLength(0);
    expect(screen.queryByRole('button', { name: words.print })).toBeNull();
  });
});
