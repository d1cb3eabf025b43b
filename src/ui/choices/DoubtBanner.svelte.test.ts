import { describe, expect, test } from 'vitest';
import { benchOf, fruitWine } from '../../../tests/story/bench.svelte';
import { CarefulMaker } from '../../../tests/story/careful-maker';
import type { Gate, Place } from '../../procedure/phase';

const struck = (gate: Gate, place: Place) => benchOf(new CarefulMaker(fruitWine).goTo(place).strike(gate));

describe('a gate in doubt', () => {
  test('is named on the bench, with both numbers', () => {
    const { getByText } = struck('proving dry', 'clear');
    expect(getByText('In doubt: Is fermentation really over?')).toBeInTheDocument();
    expect(getByText(/A reading that showed fermentation to be over was struck out on/)).toBeInTheDocument();
    expect(
      getByText(/^Struck out: 0.994 \(15 May 2031\)\.\s+What stands: 0.994 \(13 May 2031\)\.$/),
    ).toBeInTheDocument();
  });

  test.each<[Gate, Place, RegExp]>([
    ['proving mixed', 'pitch', /Stir once more by the timer/],
    ['proving dry', 'rack', /Keep every stabiliser and sweetening sachet closed/],
    ['proving dry', 'clear', /Do not bottle it, add nothing sweet/],
    ['proving still', 'bottle', /Fill no bottle/],
    ['proving dry', 'rest', /Do not move warm bottles/],
  ])('%s, at %s, says what to do now', (gate, place, says) => {
    expect(struck(gate, place).getAllByText(says)[0]).toBeInTheDocument();
  });

  test('is a line, so that the act stays in sight; a tap opens the rest', async () => {
    const { getByText, user } = struck('proving dry', 'clear');
    const line = getByText('In doubt: Is fermentation really over?').closest('summary')!;
    expect(line).toHaveTextContent('Do not bottle or sweeten it.');
    const folded = line.closest('details')!;
    expect(folded).toContainElement(getByText(/What stands: 0.994/));
    expect(folded.open).toBe(false);
    await user.click(line);
    expect(folded.open).toBe(true);
  });

  test('after bottling leads to the safety card', () =>
    expect(struck('proving dry', 'rest').getByRole('link', { name: 'See the safety card' })).toHaveAttribute(
      'href',
      '#/safety',
    ));

  test('is told on whatever page of the bench is open', async () => {
    const { press, getByText } = struck('proving dry', 'proving clear');
    await press('go on in spite of this');
    expect(getByText('In doubt: Is fermentation really over?')).toBeInTheDocument();
  });

  test('is not there while nothing is struck', () =>
    expect(
      benchOf(new CarefulMaker(fruitWine).goTo('clear')).queryByText(/In doubt/),
    ).not.toBeInTheDocument());
});
