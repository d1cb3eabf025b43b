import { describe, expect, test } from 'vitest';
import { before, benchOf, fruitWine } from '../../../tests/story/bench.svelte';
import { Maker } from '../../../tests/story/maker';
import { HOUR } from '../../domain/calendar';
import type { Celsius, Instant } from '../../domain/unit';
import type { Gravity } from '../../domain/gravity';

const DAY = 24 * HOUR;
const WHY = 'I move house on Friday';

/** Long enough, and seen clear on one day only. */
const lookedOnce = () => new Maker(fruitWine).goTo('proving clear').wait(24);

/** Dry, warm and steady, but on day 11: the sheet asks for day 12. */
function early(): Maker {
  const maker = new Maker(fruitWine).goTo('proving dry');
  const { facts, now } = maker;
  maker.snapshot = {
    ...maker.snapshot,
    context: {
      ...maker.snapshot.context,
      facts: { ...facts, pitched: { ...now, at: (now.at - 11 * DAY) as Instant } },
    },
  };
  return maker;
}

const coldWine = () => {
  const maker = before('take wine temperature 1');
  maker.report({
    type: 'temperature taken',
    how: 'touch',
    act: 'take wine temperature 1',
    celsius: 9 as Celsius,
  });
  return maker;
};

describe('going on in spite of a clause', () => {
  test('is a link at a shut gate whose clauses all give way, and opens a page that says what it means', async () => {
    const { press, heading, getByText } = benchOf(lookedOnce());
    await press('go on in spite of this');
    expect(heading()).toBe('Go on in spite of this');
    expect(getByText(/A thin haze shows on the second day/)).toBeInTheDocument();
  });

  test.each(['', 'x', ' . , !'])(
    'wants a reason: “%s” is none, says so, and stays as it was typed',
    async (reason) => {
      const { press, type, reports, getByLabelText } = benchOf(lookedOnce());
      await press('go on in spite of this');
      const field = 'Why without looking on two days?';
      if (reason) await type(field, reason);
      await press('go on all the same');
      expect(getByLabelText(field)).toHaveAccessibleDescription(/needs a reason in your own words/);
      expect(getByLabelText(field)).toHaveValue(reason);
      expect(reports).toEqual([]);
    },
  );

  test('with a reason opens the gate, and the gate shows it for good', async () => {
    const { press, type, reports, heading, getByText } = benchOf(lookedOnce());
    await press('go on in spite of this');
    await type('Why without looking on two days?', ` ${WHY} `);
    await press('go on all the same');
    expect(reports).toEqual([
      {
        type: 'overridden',
        how: 'touch',
        question: 'proving clear',
        clause: 'not-looked-at',
        reason: WHY,
      },
    ]);
    expect(heading()).toBe('It is bright.');
    expect(
      getByText(/It was not seen clear on two days. The reason given: “I move house on Friday”./),
    ).toBeInTheDocument();
  });

  test('of several clauses keeps each of them', async () => {
    const maker = lookedOnce();
    maker.judge('clear', false);
    const { press, type, reports } = benchOf(maker);
    await press('go on in spite of this');
    await type('Why go on in spite of all this?', WHY);
    await press('go on all the same');
    expect(reports.map((report) => 'clause' in report && report.clause)).toEqual(['cloudy', 'not-looked-at']);
  });

  test('is taken back by its main pad, by the space bar, and by Escape', async () => {
    const { user, press, heading, reports } = benchOf(lookedOnce());
    for (const leave of [
      () => press('wait after all'),
      () => user.keyboard(' '),
      () => user.keyboard('{Escape}'),
    ]) {
      await press('go on in spite of this');
      await leave();
      expect(heading()).toBe('Not yet.');
    }
    expect(reports).toEqual([]);
  });

  test('is a pad too, when it is asked what can be said; a key comes to either', async () => {
    const { user, heading, press, pad } = benchOf(lookedOnce());
    for (const shown of [() => Promise.resolve(), () => press('what can I say')]) {
      await shown();
      pad('go on in spite of this').focus();
      await user.keyboard('{Enter}');
      expect(heading()).toBe('Go on in spite of this');
      await press('wait after all');
    }
  });

  test('is there for the days of the dryness gate, when only they are wanting', async () => {
    const { press, type, heading } = benchOf(early());
    expect(heading()).toBe('Not yet.');
    await press('go on in spite of this');
    await type('Why before the sheet’s day?', WHY);
    await press('go on all the same');
    expect(heading()).toBe('It is finished.');
  });

  test('is there at an act that is held: wine too cold to fine', async () => {
    const { press, type, reports, getByText, heading } = benchOf(coldWine());
    expect(getByText('Held for now')).toBeInTheDocument();
    await press('go on in spite of this');
    await type('Why fine it cold?', WHY);
    await press('go on all the same');
    expect(reports).toMatchObject([{ type: 'overridden', question: 'warm enough to fine' }]);
    expect(heading()).not.toMatch(/temperature|warm/i);
  });
});

describe('where a clause gives way to nothing', () => {
  const wet = () => {
    const maker = new Maker(fruitWine).goTo('proving dry');
    maker.wait(1).read({ reading: 10_100 as Gravity });
    return maker;
  };

  test('there is no way in spite of it, and the reason why can be read', async () => {
    const { queryByRole, press, heading, getByText } = benchOf(wet());
    expect(queryByRole('button', { name: /in spite of/ })).not.toBeInTheDocument();
    await press('why not this one?');
    expect(heading()).toBe('Why not this one?');
    expect(getByText('Sorbate into a wine that ferments')).toBeInTheDocument();
    await press('leave it shut');
    expect(heading()).toBe('Not yet.');
  });

  test('gas is told to give way later: first the rounds, warmth and one more test', async () => {
    const { press, getByText } = benchOf(new Maker(fruitWine).goTo('proving gas-free'));
    await press('why not this one?');
    expect(getByText(/first the rounds of stirring, then warmth/)).toBeInTheDocument();
  });
});
