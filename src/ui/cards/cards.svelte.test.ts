import { describe, expect, test } from 'vitest';
import { before, benchOf, fruitWine } from '../../../tests/story/bench.svelte';
import { Maker } from '../../../tests/story/maker';

const bench = (act: string) => benchOf(before(act));

describe('a sachet', () => {
  test('is in only after a yes to its printed name', async () => {
    const { press, heed, reports, heading } = bench('add sachet sorbate');
    expect(heading()).toContain('“Potassium sorbate, stabiliser”');
    await heed();
    await press('that is done');
    expect(heading()).toBe('Both sachets of “Potassium sorbate, stabiliser” are in. Right?');
    expect(reports).toEqual([]);
    await press('yes it is');
    expect(reports).toEqual([{ type: 'act done', how: 'touch', act: 'add sachet sorbate' }]);
  });

  test.each(['no it is not', 'Escape'])('is not in after %s', async (answer) => {
    const { press, heed, user, reports, heading } = bench('add sachet sorbate');
    await heed();
    await press('that is done');
    await (answer === 'Escape' ? user.keyboard('{Escape}') : press(answer));
    expect(reports).toEqual([]);
    expect(heading()).not.toContain('Right?');
  });

  test('is not let in before its warning, its act and its name have each been answered', async () => {
    const { user, reports, heading } = bench('add sachet sorbate');
    await user.keyboard('[Space]');
    await user.keyboard('[Space]');
    expect(heading()).toContain('Right?');
    await user.keyboard('[PageUp]');
    expect(heading()).not.toContain('Right?');
    expect(reports).toEqual([]);
  });

  test('says how many, what is in it and whom it can harm', async () => {
    const { heed, getByText } = bench('add sachet sulphite');
    await heed();
    expect(getByText('one sachet · sulphite')).toBeInTheDocument();
    expect(getByText('allergen: sulphite')).toBeInTheDocument();
  });
});

test('bottles filled and closed are asked back too', async () => {
  const { press, heed, reports, heading, getByText } = bench('fill and close 1');
  expect(getByText(/cannot be taken back/)).toBeInTheDocument();
  await heed();
  await press('that is done');
  expect(heading()).toBe('Every bottle is filled and closed. Right?');
  expect(reports).toEqual([]);
});

describe('the clock of a stir', () => {
  test('starts, turns, is held, and goes on', async () => {
    const { press, heed, later, getByRole, getByText, reports } = bench('stir out gas 1');
    await heed();
    await press('start the clock');
    later(42);
    expect(getByRole('timer')).toHaveTextContent('4:18');
    expect(getByText('Now the other way round.')).toBeInTheDocument();
    expect(getByText('Next turn in 18 seconds.')).toBeInTheDocument();
    await press('wait a moment');
    later(60);
    expect(getByRole('timer')).toHaveTextContent('4:18');
    await press('go on now');
    expect(reports.map(({ type }) => type)).toEqual(['clock started', 'clock paused', 'clock resumed']);
  });

  test('says how late it is, takes one more minute, and is finished', async () => {
    const { press, heed, later, getByText, getByRole, reports } = bench('stir out gas 1');
    await heed();
    await press('start the clock');
    later(300 + 240);
    expect(getByText('Time was up 4 minutes ago.')).toBeInTheDocument();
    await press('one more minute');
    expect(getByRole('timer')).toHaveTextContent('1:00');
    later(60);
    await press('that is done');
    expect(reports.at(-1)).toEqual({ type: 'act done', how: 'touch', act: 'stir out gas 1' });
  });
});

test('a wait by the clock cannot be ended before its time', async () => {
  const { press, heed, later, queryByRole, pad } = bench('sanitiser contact 1');
  await heed();
  await press('start the clock');
  later(599);
  expect(queryByRole('button', { name: 'that is done' })).not.toBeInTheDocument();
  later(1);
  expect(pad('that is done')).toBeEnabled();
});

describe('the sachets laid out', () => {
  test('count as missing where they are not ticked, after a yes', async () => {
    const { user, press, reports, heading, getByText, getAllByRole } = benchOf(new Maker(fruitWine));
    for (const tick of getAllByRole('checkbox').slice(1)) await user.click(tick);
    await press('that is done');
    expect(heading()).toBe('Not found: Bentonite, first in. Right?');
    await press('yes it is');
    expect(reports).toMatchObject([{ type: 'sachets accounted', missing: ['Bentonite, first in'] }]);
    expect(getByText('Held for now')).toBeInTheDocument();
  });

  test('are all there when all are ticked', async () => {
    const { user, press, reports, getAllByRole } = benchOf(new Maker(fruitWine));
    for (const tick of getAllByRole('checkbox')) await user.click(tick);
    await press('that is done');
    await press('yes it is');
    expect(reports).toEqual([
      { type: 'sachets accounted', how: 'touch', act: 'lay out sachets 1', missing: [] },
    ]);
  });
});

test('what is judged has two answers; one that a key gives is asked back', async () => {
  const { user, press, heed, reports, heading, getByText } = bench('knock the surface 1');
  await heed();
  expect(getByText('Did the knock raise a rush of gas?', { selector: '.question' })).toBeInTheDocument();
  await user.keyboard('[Space]');
  expect(heading()).toBe('Yes, it fizzed up. Right?');
  expect(reports).toEqual([]);
  await press('no it is not');
  await press(/^No, it stayed calm/);
  expect(reports).toEqual([
    { type: 'judged', how: 'touch', act: 'knock the surface 1', what: 'rush', yes: false },
  ]);
});
