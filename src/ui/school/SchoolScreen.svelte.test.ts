import { render } from '@testing-library/svelte';
import { userEvent } from '@testing-library/user-event';
import { describe, expect, test } from 'vitest';
import { FIRST_PREFERENCES } from '../../domain/preferences';
import { randomFrom } from '../../domain/random-from';
import { en } from '../../text/en';
import { formatsFor } from '../../text/formats';
import { roundsFrom, type Round } from './round';
import SchoolScreen from './SchoolScreen.svelte';

const formats = formatsFor({ preferences: FIRST_PREFERENCES, language: 'en', timeZone: 'UTC' });
const words = en.school;

/** A learner with a hydrometer of 0.001, whose rounds are known from the seed. */
async function learner(seed = 3) {
  const screen = render(SchoolScreen, { props: { text: en, formats, random: randomFrom(seed) } });
  const user = userEvent.setup();
  const press = (name: string | RegExp) => user.click(screen.getByRole('button', { name }));
  await press(words.begin);
  return {
    ...screen,
    user,
    press,
    rounds: roundsFrom(randomFrom(seed), 10),
    picture: () => screen.getByRole('img').getAttribute('aria-label'),
    told: () => screen.getByRole('status').textContent,
    answer: async (given: string) => {
      const field = screen.getByLabelText(words.reading);
      await user.clear(field);
      await user.type(field, `${given}{Enter}`);
    },
  };
}
const truthOf = ({ truth }: Round) => formats.gravity(truth);
const holdingUp = ({ held }: Round) => held?.by === 'bubbles';

/** Reads rightly up to the first round of a kind. */
async function upTo(is: (round: Round) => boolean) {
  const school = await learner();
  const nth = school.rounds.findIndex(is);
  for (const round of school.rounds.slice(0, nth)) {
    await school.answer(truthOf(round));
    await school.user.keyboard('{Enter}');
  }
  return { ...school, round: school.rounds[nth]! };
}

describe('a school opened from a batch', () => {
  test('takes the scale of its hydrometer, and asks for none', async () => {
    const screen = render(SchoolScreen, {
      props: { division: 20, text: en, formats, random: randomFrom(3) },
    });
    expect(screen.queryByRole('radio')).toBeNull();
    expect(screen.getByText(words.yours('0.002'))).toBeInTheDocument();
    await userEvent.setup().click(screen.getByRole('button', { name: words.begin }));
    expect(screen.getByRole('img').getAttribute('aria-label')).toContain('a line at every 0.002');
  });

  test('asks for the scale where it is opened from elsewhere', () => {
    const screen = render(SchoolScreen, { props: { text: en, formats, random: randomFrom(3) } });
    expect(screen.getAllByRole('radio')).toHaveLength(2);
  });
});

describe('a reading in the school', () => {
  test('is right as it is typed at the bench, and Enter goes on', async () => {
    const { answer, told, rounds, user, getByRole } = await learner();
    await answer(truthOf(rounds[0]!).replace('.', ','));
    expect(told()).toBe(`Right: ${truthOf(rounds[0]!)}.`);
    await user.keyboard('{Enter}');
    expect(getByRole('heading', { level: 2 })).toHaveTextContent('Reading 2 of 10');
  });

  test('shows bubbles, and the mistake that they make', async () => {
    const { picture, answer, told, round } = await upTo(holdingUp);
    expect(picture()).toMatch(/Bubbles cling to the glass$/);
    await answer(formats.gravity((round.truth + round.held!.off) as never));
    expect(told()).toBe(`Bubbles held it up. Without them it sinks to ${truthOf(round)}.`);
  });

  test('is free of bubbles once it is spun', async () => {
    const { picture, press } = await upTo(holdingUp);
    await press(words.look.spin);
    expect(picture()).toMatch(/It floats free$/);
  });

  test('shows the surface as an oval until the eye is level', async () => {
    const { picture, press } = await upTo(({ eye }) => eye === 'above');
    expect(picture()).toMatch(/Your eye is above it: the surface is an oval, its near edge 3 lines lower/);
    await press(words.look.lower);
    expect(picture()).toMatch(/the surface is one straight line/);
  });

  test('draws where it was read beside where it reads', async () => {
    const { answer, getByRole, rounds } = await upTo(({ held, eye }) => !held && eye === 'level');
    const round = rounds.find(({ held, eye }) => !held && eye === 'level')!;
    await answer(formats.gravity((round.truth - 20) as never));
    const drawn = getByRole('img').textContent;
    expect(drawn).toContain(`right${truthOf(round)}`);
    expect(drawn).toContain(`you${formats.gravity((round.truth - 20) as never)}`);
  });

  test('that is no number is asked again and costs nothing', async () => {
    const { answer, told, getByLabelText, getByRole } = await learner();
    await answer('foggy');
    expect(getByLabelText(words.reading)).toHaveAccessibleDescription(/foggy/);
    expect(told()).toBe('');
    expect(getByRole('button', { name: words.check })).toBeEnabled();
  });
});

test('in the end it says what to watch for, from the learner’s own mistakes', async () => {
  const { answer, user, rounds, getByRole, getAllByRole, queryByText } = await learner();
  const rims = rounds.filter(({ held, eye }) => !held && eye === 'level');
  for (const round of rounds) {
    await answer(formats.gravity((rims.includes(round) ? round.truth - 20 : round.truth) as never));
    await user.keyboard('{Enter}');
  }
  expect(getByRole('heading', { level: 2 })).toHaveTextContent('8 of 10 read right');
  expect(getAllByRole('listitem').map(({ textContent }) => textContent.trim())).toEqual([
    `${words.mistakes.rim.watch} (twice)`,
  ]);
  expect(queryByText(words.outcome.none)).not.toBeInTheDocument();
});
