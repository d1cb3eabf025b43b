import { render, screen, within } from '@testing-library/svelte';
import userEvent from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import { Maker } from '../../../tests/story/maker';
import { HOUR, type Moment } from '../../domain/calendar';
import { FIRST_PREFERENCES } from '../../domain/preferences';
import type { Instant } from '../../domain/unit';
import { builtInSheets } from '../../procedure/kits';
import type { Place } from '../../procedure/phase';
import { en as text } from '../../text/en';
import { formatsFor } from '../../text/formats';
import { headerOf } from '../../workflow/header-of';
import BatchCard from './BatchCard.svelte';
import OpeningScreen from './OpeningScreen.svelte';
import type { Shelved } from './shelved';

const formats = formatsFor({ preferences: FIRST_PREFERENCES, language: 'en', timeZone: 'Europe/Vienna' });
const [lightFruit, dryWhite] = builtInSheets;

function shelved(name: string, maker: Maker): Shelved {
  const begun = maker.facts.begun;
  const header = headerOf({ id: name, name, begun, freeHour: 18, sheet: maker.sheet }, maker.snapshot);
  return { header, facts: maker.facts };
}
const at = (name: string, place: Place, sheet = lightFruit!) => shelved(name, new Maker(sheet).goTo(place));

function show(batches: readonly Shelved[], now: Moment, more: object = {}) {
  const said = { onbringin: vi.fn(), onkeep: vi.fn(), onagain: vi.fn() };
  const { unmount } = render(OpeningScreen, {
    batches,
    now,
    text,
    whole: text,
    Card: BatchCard,
    formats,
    ...said,
    ...more,
  });
  return { ...said, unmount };
}
const NOW: Moment = { at: Date.UTC(2031, 4, 3, 15) as Instant, offsetMinutes: 120 };
const cards = () =>
  screen.getAllByRole('article').map((card) => within(card).getByRole('heading').textContent);

describe('without a batch', () => {
  test('it says what this is in two sentences, and leads to the first', () => {
    show([], NOW, { persisted: false });
    const what = screen.getByText(/^Fallbright leads you/);
    expect(what.textContent.match(/\./g)).toHaveLength(2);
    expect(screen.getByRole('link', { name: 'Start a batch' })).toHaveAttribute('href', '#/start');
    expect(screen.queryByText(/browser/)).toBeNull();
  });
});

describe('with batches', () => {
  test('a card says the kit, where it stands, the day, and what is due when', () => {
    const maker = new Maker(lightFruit!).goTo('ferment');
    while (maker.act?.step !== 'read on the way') maker.answer();
    show([shelved('For the party', maker)], maker.now);
    const card = screen.getByRole('article');
    expect(within(card).getByRole('link', { name: 'For the party' })).toHaveAttribute(
      'href',
      '#/batch/For the party',
    );
    for (const words of [
      'Hedge Lantern, light fruit wine, raspberry and apple',
      'Ferment',
      'Read the gravity on the way',
      'Thursday 8 May, about 18:00',
    ])
      expect(card).toHaveTextContent(words);
    expect(card).toHaveTextContent(/day [12]/);
    expect(within(card).getByRole('img', { name: 'Ferment: stage 7 of 22' })).toBeInTheDocument();
  });

  test('late ones stand first and say so; ended ones stand apart, last', () => {
    const late = new Maker(lightFruit!).goTo('ferment');
    while (late.act?.step !== 'read on the way') late.answer();
    const ended = new Maker(lightFruit!);
    ended.report({ type: 'ended', how: 'touch', end: 'discarded', reason: 'the bag had burst' });
    const now = { ...late.now, at: (late.act.due! + 2 * HOUR) as Instant };
    show([shelved('ended', ended), at('beginning', 'clean', dryWhite), shelved('late', late)], now);
    expect(cards()).toEqual(['late', 'beginning', 'ended']);
    expect(screen.getAllByRole('article')[0]).toHaveTextContent(
      'Late Read the gravity on the way It was due',
    );
    expect(screen.getAllByRole('heading', { level: 2 }).map(({ textContent }) => textContent)).toEqual([
      'Under way',
      'Ended',
    ]);
    expect(screen.getAllByRole('article')[2]).toHaveTextContent('Thrown away');
  });

  test('a mishap that wants another look stands on its batch’s card: its day, and on that day what to look at', () => {
    const foamed = new Maker(lightFruit!).goTo('ferment');
    while (foamed.act?.step !== 'read on the way') foamed.answer();
    foamed.report({ type: 'mishap told', how: 'touch', mishap: 'foamed over' });
    const { title, look } = text.whatHappened.mishaps['foamed over'];
    const other = new Maker(lightFruit!).goTo('ferment');
    while (other.act?.step !== 'read on the way') other.answer();
    const batches = [shelved('other', other), shelved('foamed', foamed)];

    const { unmount } = show(batches, foamed.now);
    expect(screen.getAllByRole('article')[0]).toHaveTextContent(
      /Look again on Monday 5 May, about \d\d:\d\d: It foamed/,
    );
    unmount();

    show(batches, { ...foamed.now, at: (foamed.now.at + 13 * HOUR) as Instant });
    expect(cards()).toEqual(['foamed', 'other']);
    const [due, untold] = screen.getAllByRole('article');
    expect(due).toHaveTextContent(`Look again ${title}. ${look} It is due since Monday 5 May, about`);
    expect(due).toHaveTextContent('Next Read the gravity on the way');
    expect(untold).not.toHaveTextContent('Look again');
  });

  test('one whose journal does not follow names the problem, and can be kept as a file', async () => {
    const broken = at('broken', 'mix');
    const problem = { code: 'journal-gap', entry: 7 } as const;
    const { onkeep } = show([{ ...broken, problem }], NOW);
    expect(screen.getByRole('alert')).toHaveTextContent('Entry 7 of the record is missing.');
    await userEvent.click(screen.getByRole('button', { name: 'Keep it as a file' }));
    expect(onkeep).toHaveBeenCalledExactlyOnceWith('broken');
  });

  test.each([
    [true, 'The browser has promised to keep your batches until you delete them.'],
    [false, /^The browser may clear your batches/],
  ])('storage that is promised (%s) is told in a sentence', (persisted, sentence) => {
    show([at('one', 'clean')], NOW, { persisted });
    expect(screen.getByText(sentence)).toBeInTheDocument();
  });

  test('a storage that refuses is told, with what to do', () => {
    show([], NOW, { problem: { code: 'storage-refused' } });
    expect(screen.getByRole('alert')).toHaveTextContent('Open the guide in an ordinary window');
  });

  test('a file that was not taken is told in its own words', () => {
    show([], NOW, { notTaken: { code: 'not-a-batch-file' } });
    expect(screen.getByRole('alert')).toHaveTextContent('This file is not a batch of this guide.');
  });

  test('batches that could not be fetched are told as safe, and asked for again; nobody is told to begin', async () => {
    const { onagain } = show([], NOW, { whole: undefined, notFetched: true });
    expect(screen.getByRole('alert')).toHaveTextContent(
      /could not be fetched\. They are safe on this device/,
    );
    expect(screen.queryByText(/^Fallbright leads you/)).toBeNull();
    await userEvent.click(screen.getByRole('button', { name: 'Try again' }));
    expect(onagain).toHaveBeenCalledOnce();
  });
});
