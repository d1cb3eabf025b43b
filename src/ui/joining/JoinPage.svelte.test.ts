import { describe, expect, test } from 'vitest';
import { benchOf, fruitWine } from '../../../tests/story/bench.svelte';
import { Maker } from '../../../tests/story/maker';
import { en } from '../../text/en';

const { joining } = en.whatHappened;
const { join } = en.bench.otherWays;

async function opened() {
  const page = benchOf(new Maker(fruitWine));
  await page.press(join);
  const answer = (sachet: string, known: string) => {
    const labels = [...page.getByRole('group', { name: sachet }).querySelectorAll('label')];
    return page.user.click(labels.find((each) => each.textContent.includes(known))!);
  };
  const reached = (place: string) => page.user.selectOptions(page.getByLabelText(joining.reached), place);
  return { ...page, answer, reached };
}

describe('joining with a batch that is running already', () => {
  test('tells since when, how far, what is in it, and how much there is', async () => {
    const page = await opened();
    await page.type(joining.since, '2031-04-28');
    await page.reached(en.places.ferment);
    await page.type(joining.litres, '22.5');
    await page.answer('Wine yeast', joining.sachet.in);
    await page.type(joining.day, '2031-04-29');
    await page.answer('Bentonite, first in', joining.sachet.notIn);
    await page.press(joining.join);
    expect(page.reports).toEqual([
      {
        type: 'joined',
        how: 'touch',
        since: Date.UTC(2031, 3, 28, 10),
        reached: 'ferment',
        added: [{ sachet: 'yeast', at: Date.UTC(2031, 3, 29, 10) }],
        notIn: ['bentonite'],
        litres: 22.5,
      },
    ]);
    expect(page.heading()).not.toBe(joining.title);
  });

  test('asks for what is needed, beside its field, and keeps what was typed', async () => {
    const page = await opened();
    await page.type(joining.litres, 'some');
    await page.press(joining.join);
    expect(page.reports).toEqual([]);
    expect(page.getByLabelText(joining.since)).toHaveAccessibleDescription(joining.answer);
    expect(page.getByLabelText(joining.reached)).toHaveAccessibleDescription(joining.answer);
    expect(page.getByLabelText(joining.litres)).toHaveAccessibleDescription(/some/);
    expect(page.getByLabelText(joining.litres)).toHaveValue('some');
  });

  test('of what is in its bottles, asks how many they are', async () => {
    const page = await opened();
    await page.reached(en.places.rest);
    expect(page.getByLabelText(joining.filled)).toBeInTheDocument();
    expect(page.queryByLabelText(joining.litres)).not.toBeInTheDocument();
  });

  test('a day that has not come is told in a sentence, and nothing is lost', async () => {
    const page = await opened();
    await page.type(joining.since, '2031-06-01');
    await page.reached(en.places.ferment);
    await page.type(joining.litres, '22');
    await page.press(joining.join);
    expect(page.getAllByText(/future|has not come/i)[0]).toBeInTheDocument();
    expect(page.heading()).toBe(joining.title);
    expect(page.getByLabelText(joining.litres)).toHaveValue('22');
  });

  test('is offered at the very beginning only', () => {
    const maker = new Maker(fruitWine);
    maker.answer();
    expect(benchOf(maker).queryByRole('button', { name: join })).not.toBeInTheDocument();
  });
});
