import { render, screen } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { expect, test, vi } from 'vitest';
import { before } from '../../../tests/story/bench.svelte';
import { FIRST_PREFERENCES } from '../../domain/preferences';
import type { Problem } from '../../domain/problem';
import type { Mishap } from '../../procedure/mishap';
import { en as text } from '../../text/en';
import { formatsFor } from '../../text/formats';
import { entryWords } from './entry-words';
import Entry from './Entry.svelte';

const formats = formatsFor({ preferences: FIRST_PREFERENCES, language: 'en', timeZone: 'UTC' });
const { takeBack } = text.whatHappened;

/** The line of something that was told, while its batch is open. */
function lineOf(mishap: Mishap, told: { sachet?: string; struck?: boolean } = {}) {
  const maker = before('look for life 1');
  const sachet = told.sachet === undefined ? {} : { sachet: told.sachet };
  maker.report({ type: 'mishap told', how: 'touch', mishap, ...sachet });
  const entry = maker.facts.entries;
  if (told.struck)
    maker.report({ type: 'mishap struck', how: 'touch', entry, reason: 'it was another vessel' });
  const { facts, journal, sheet } = maker;
  const onstrike = vi.fn((_: number, _reason: string, _how: string) =>
    Promise.resolve<Problem | undefined>(undefined),
  );
  const words = entryWords(sheet, facts, text, formats);
  render(Entry, { event: journal[entry - 1]!, entry, facts, words, text, plain: formats, formats, onstrike });
  return { entry, onstrike };
}
const takeItBack = () => userEvent.click(screen.getByRole('button', { name: takeBack.confirm }));

test('what was told by mistake is taken back with a reason', async () => {
  const { entry, onstrike } = lineOf('hydrometer in the wine');
  await takeItBack();
  expect(onstrike).not.toHaveBeenCalled();
  expect(screen.getByLabelText(takeBack.reason)).toHaveAccessibleDescription(
    /needs a reason in your own words/,
  );
  await userEvent.type(screen.getByLabelText(takeBack.reason), ' every piece lay on the floor ');
  await takeItBack();
  expect(onstrike).toHaveBeenCalledExactlyOnceWith(entry, 'every piece lay on the floor', expect.any(String));
});

test('what changed the wine is not taken back: what is in stays in', () => {
  lineOf('wrong sachet', { sachet: 'sulphite' });
  expect(screen.queryByText(takeBack.title)).toBeNull();
});

test('what was taken back stays, struck through, with the word', () => {
  lineOf('hydrometer in the wine', { struck: true });
  expect(screen.getByText(text.whatHappened.mishaps['hydrometer in the wine'].entry).tagName).toBe('S');
  expect(screen.queryByText(takeBack.title)).toBeNull();
});
