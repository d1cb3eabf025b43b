import { describe, expect, test } from 'vitest';
import { before, benchOf, fruitWine } from '../../../tests/story/bench.svelte';
import { Maker, type Wine } from '../../../tests/story/maker';

const stops = (gravity: number): Wine => ({
  gravityOn: (day) => Math.max(gravity, 1.067 - day * 0.01),
  celsius: 21,
});

/** A ferment that stopped at 1.020, read on day 7 and day 11: the next reading is asked for on day 10 and later. */
function stuck(): Maker {
  const maker = before('read on the way 1', new Maker(fruitWine, stops(1.02)));
  maker.answer();
  maker.wait(24).read();
  maker.wait(73).read();
  return maker;
}

describe('how a ferment goes', () => {
  test.each<[string, (maker: Maker) => void, RegExp]>([
    ['Not read yet', () => undefined, /Nothing has been read since the yeast went in/],
    ['It goes on', (maker) => void maker.wait(24).read(), /There is one reading so far/],
    [
      'Slow',
      (maker) => {
        maker.wait(24).read();
        maker.wait(24).read({ reading: (maker.facts.readings.at(-1)!.gravity - 5) as never });
      },
      /It goes on, though slowly/,
    ],
    ['Too cold', (maker) => void maker.wait(24).read({ wineCelsius: 14 as never }), /Cold yeast pauses/],
    [
      'Misread?',
      (maker) => {
        maker.wait(24).read();
        maker.wait(24).read({ reading: (maker.facts.readings.at(-1)!.gravity + 50) as never });
      },
      /Fermenting never does that/,
    ],
  ])('while it waits: %s', (title, happens, means) => {
    const maker = before('read on the way 1');
    happens(maker);
    const { getByRole, getByText } = benchOf(maker);
    expect(getByRole('heading', { name: title })).toBeInTheDocument();
    expect(getByText(means)).toBeInTheDocument();
  });

  test('is told at the dryness gate too', () => {
    const maker = new Maker(fruitWine, stops(1.02)).goTo('proving dry');
    maker.wait(73).read();
    const { getByRole } = benchOf(maker);
    expect(getByRole('heading', { name: 'Stuck' })).toBeInTheDocument();
    expect(getByRole('button', { name: 'help a stuck wine' })).toBeInTheDocument();
  });
});

describe('help for a stuck ferment', () => {
  test('is offered only when it is stuck', () =>
    expect(
      benchOf(before('read on the way 1')).queryByRole('button', { name: 'help a stuck wine' }),
    ).not.toBeInTheDocument());

  test('comes one rung at a time, the gentlest first, and each is written down', async () => {
    const { press, heading, reports, getByText } = benchOf(stuck());
    await press('help a stuck wine');
    expect(heading()).toBe('Check the reading and its temperature.');
    expect(getByText('Help 1 of 4')).toBeInTheDocument();
    await press('I have done this');
    expect(heading()).toBe('Warm the wine by 2 to 3 °C (4 to 5 °F).');
    await press('I have done this');
    expect(reports).toEqual([
      { type: 'helped', how: 'touch', rung: 'read again' },
      { type: 'helped', how: 'touch', rung: 'warmed' },
    ]);
  });

  test('waits for its three days, then asks for a reading, and only then gives the next', async () => {
    const maker = stuck();
    maker.report({ type: 'helped', how: 'touch', rung: 'read again' });
    maker.report({ type: 'helped', how: 'touch', rung: 'warmed' });
    const { press, heading, getByText, queryByRole, later, heed } = benchOf(maker);
    await press('help a stuck wine');
    expect(heading()).toBe('Look again');
    expect(getByText(/^Read again on \w+day \d+ May, about/)).toBeInTheDocument();
    expect(getByText(/^Warm the wine by 2 to 3 °C \(4 to 5 °F\): /)).toBeInTheDocument();
    expect(queryByRole('button', { name: 'I have done this' })).not.toBeInTheDocument();
    later(72 * 3600);
    expect(getByText(/Its three days are over/)).toBeInTheDocument();
    await heed();
    await press('new reading');
    expect(heading()).toBe('A new reading');
  });

  test('that was all tried says so, and never names a stabiliser as help', async () => {
    const maker = stuck();
    for (const rung of ['read again', 'warmed', 'roused', 'fresh starter'] as const) {
      maker.report({ type: 'helped', how: 'touch', rung });
      maker.wait(72).read();
    }
    const { press, getByText } = benchOf(maker);
    await press('help a stuck wine');
    expect(getByText(/All four helps were given their time/)).toHaveTextContent(
      /No stabiliser, and no bottle/,
    );
  });
});
