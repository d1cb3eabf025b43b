import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import { headerFor } from '../../../tests/story/header';
import { Maker } from '../../../tests/story/maker';
import type { Gravity } from '../../domain/gravity';
import { FIRST_PREFERENCES } from '../../domain/preferences';
import type { Problem } from '../../domain/problem';
import type { Celsius } from '../../domain/unit';
import { builtInSheets } from '../../procedure/kits';
import { en as text } from '../../text/en';
import { formatsFor } from '../../text/formats';
import type { Absence } from '../choices/absence';
import JournalScreen from './JournalScreen.svelte';

const preferences = FIRST_PREFERENCES;
const formats = formatsFor({ preferences, language: 'en' });

function show(maker: Maker, { problem, refusal }: { problem?: Problem; refusal?: Problem } = {}) {
  const header = headerFor(maker);
  const asked = {
    onnote: vi.fn((_: string, _how: string) => Promise.resolve(refusal)),
    onstrike: vi.fn((_: number, _reason: string, _how: string) => Promise.resolve(refusal)),
    onplan: vi.fn((_: Absence, _how: string) => Promise.resolve(refusal)),
    oncopy: vi.fn((_: string) => Promise.resolve(true)),
    onkeep: vi.fn(),
    onremove: vi.fn(() => Promise.resolve(undefined)),
  };
  const { facts, now } = maker;
  const props = { header, events: maker.journal, facts, now, problem, text, formats, preferences, ...asked };
  render(JournalScreen, { props });
  return asked;
}
const lines = () =>
  screen.getAllByRole('listitem').map(({ textContent }) => textContent.replace(/\s+/g, ' ').trim());
const fresh = () => new Maker(builtInSheets[0]!);

/** A wine with two readings that agree two days apart, and one between them that was misread and struck. */
function fermented(): Maker {
  const maker = fresh().goTo('ferment');
  while (maker.act?.step !== 'read towards dry') maker.answer();
  maker.read({ act: maker.act.id, sampleCelsius: 25 as Celsius, reading: 9940 as Gravity });
  maker.wait(1).read({ reading: 10_400 as Gravity });
  const misread = maker.journal.length;
  maker.report({ type: 'reading struck', how: 'key', entry: misread, reason: 'held it against the light' });
  return maker;
}

describe('a journal', () => {
  test('is empty before the first act', () => {
    show(fresh());
    expect(screen.getByText(/Nothing is recorded yet/)).toBeInTheDocument();
  });

  test('stands newest first, and the other way round on demand', async () => {
    const maker = fresh().goTo('clean');
    show(maker);
    const newestFirst = lines();
    expect(newestFirst).toHaveLength(maker.journal.length);
    expect(newestFirst.at(-1)).toContain('Every sachet of the sheet was in the box.');
    await userEvent.click(screen.getByRole('radio', { name: 'Oldest first' }));
    expect(lines()).toEqual(newestFirst.toReversed());
  });

  test('has a sentence for every event of a whole batch, without a hole in one', () => {
    show(fresh().goTo('finished'));
    for (const line of lines()) expect(line).not.toMatch(/undefined|NaN|\[object|function/);
  });

  test('a line says when on its maker’s clock, which day, and how it came', () => {
    show(fresh().goTo('clean'));
    expect(lines().at(-1)).toBe(
      '3 May 2031 at 17:00 before the yeast Every sachet of the sheet was in the box. entry 1 by touch',
    );
  });

  test('a reading shows what was read and what it is corrected, with both warmths', () => {
    const maker = fermented();
    show(maker);
    const { gravity } = maker.facts.readings.at(-2)!;
    expect(gravity).not.toBe(9940);
    expect(lines()[2]).toContain(
      `Read 0.994 in a sample of 25 °C: corrected, ${formats.gravity(gravity)}. The wine itself was 21 °C.`,
    );
  });

  test('a struck reading stays, struck through, with the word', () => {
    show(fermented());
    const struck = screen.getAllByRole('listitem')[1]!;
    expect(within(struck).getByText('struck')).toBeInTheDocument();
    expect(within(struck).getByText(/^Read 1\.040/).tagName).toBe('S');
    expect(lines()[0]).toContain('was struck: held it against the light');
  });

  test('a gate names the rules and the readings that it was passed on', () => {
    const maker = fermented().goTo('proving dry');
    const counted = maker.facts.readings.filter(({ struck }) => !struck).slice(-2);
    maker.report({
      type: 'gate passed',
      how: 'touch',
      gate: 'proving dry',
      rules: 1,
      readings: counted.map(({ entry }) => entry),
    });
    show(maker);
    expect(lines()[0]).toContain(
      `Gate passed: Is fermentation really over? Judged by the house rules, edition 1, on ${counted
        .map(({ entry, gravity }) => `${formats.gravity(gravity)} (entry ${entry})`)
        .join(' and ')}.`,
    );
  });

  test('one that does not follow says so, takes no note, and gives no digest of half its facts', () => {
    show(fresh().goTo('mix'), { problem: { code: 'journal-gap', entry: 7 } });
    expect(screen.getByRole('alert')).toHaveTextContent('Entry 7 of the record is missing.');
    expect(screen.queryByRole('button', { name: 'write it down' })).toBeNull();
    expect(screen.queryByText(text.digest.title)).toBeNull();
  });
});

describe('a note', () => {
  const write = () => userEvent.click(screen.getByRole('button', { name: 'write it down' }));

  test('is written down, and the field is empty again', async () => {
    const { onnote } = show(fresh());
    await userEvent.type(screen.getByLabelText('Add a note'), ' smells of pears ');
    await write();
    expect(onnote).toHaveBeenCalledExactlyOnceWith('smells of pears', expect.stringMatching(/touch|key/));
    expect(screen.getByLabelText('Add a note')).toHaveValue('');
    expect(screen.getByText('The note is in the journal.')).toBeInTheDocument();
  });

  test('with nothing in it asks for something', async () => {
    const { onnote } = show(fresh());
    await write();
    expect(onnote).not.toHaveBeenCalled();
    expect(screen.getByLabelText('Add a note')).toHaveAccessibleDescription(/nothing in the note/);
  });

  test('that the storage refuses stays in the field', async () => {
    show(fresh(), { refusal: { code: 'storage-full' } });
    await userEvent.type(screen.getByLabelText('Add a note'), 'smells of pears');
    await write();
    expect(screen.getByRole('alert')).toHaveTextContent('There is no room left');
    expect(screen.getByLabelText('Add a note')).toHaveValue('smells of pears');
  });
});

describe('asking for help', () => {
  const digest = () => screen.getByLabelText<HTMLTextAreaElement>(text.digest.says).value;
  const ended = () => {
    const maker = fermented();
    maker.report({ type: 'ended', how: 'touch', end: 'kept unbottled', reason: 'drunk from the jug' });
    return maker;
  };

  test.each<[string, () => Maker, RegExp]>([
    ['is open', fermented, /^Stands at: Ferment, .*, day 5 since the yeast, 23 litres$/m],
    ['was ended', ended, /^Stands at: Kept unbottled, day 5 since the yeast/m],
    ['is finished', () => fresh().goTo('finished'), /^Stands at: Finished, day/m],
  ])('of a batch that %s shows what a helper asks for, and copies it', async (_, batch, standing) => {
    const { oncopy } = show(batch());
    await userEvent.click(screen.getByText(text.digest.title));
    expect(digest()).toMatch(standing);
    await userEvent.click(screen.getByRole('button', { name: text.digest.copy }));
    expect(oncopy).toHaveBeenCalledExactlyOnceWith(digest());
    expect(screen.getByRole('status')).toHaveTextContent(text.digest.copied);
  });
});

describe('deleting', () => {
  const open = () => userEvent.click(screen.getByText('Delete this batch'));
  const remove = () => userEvent.click(screen.getByRole('button', { name: 'delete for good' }));
  const field = () => screen.getByLabelText('To delete it, type its name: Shelf two');

  test('needs the name of the batch, typed', async () => {
    const { onremove } = show(fresh());
    await open();
    await userEvent.type(field(), 'Shelf');
    await remove();
    expect(onremove).not.toHaveBeenCalled();
    expect(field()).toHaveAccessibleDescription(/nothing was deleted/);
    await userEvent.type(field(), ' Two ');
    await remove();
    expect(onremove).toHaveBeenCalledOnce();
  });

  test('offers the file first', async () => {
    const { onkeep } = show(fresh());
    await open();
    const removal = field().closest('details')!;
    await userEvent.click(within(removal).getByRole('button', { name: 'Keep it as a file' }));
    expect(onkeep).toHaveBeenCalledOnce();
  });
});
