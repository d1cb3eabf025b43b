import { describe, expect, test } from 'vitest';
import { before, benchOf, fruitWine } from '../../../tests/story/bench.svelte';
import { Maker } from '../../../tests/story/maker';

const band = (container: HTMLElement) => container.querySelector('.band');

describe('what is said', () => {
  test('is not shown twice where the page says it in the largest letters', async () => {
    const { press, container, captions, heading } = benchOf(before('lay out sachets 1'));
    expect(band(container)).not.toHaveClass('twice');
    await press('that is done');
    expect(captions().at(-1)).toBe(heading());
    expect(band(container)).toHaveClass('twice');
  });

  test('is not shown twice at a gate, whose page says it all', () => {
    const { container } = benchOf(new Maker(fruitWine).goTo('proving clear'));
    expect(band(container)).toHaveClass('twice');
  });

  test('stays in the record of what was said', async () => {
    const { press, getByRole, heading } = benchOf(before('lay out sachets 1'));
    await press('that is done');
    expect(getByRole('log', { name: 'What is said' })).toHaveTextContent(heading());
  });
});
