import { describe, expect, test } from 'vitest';
import type { Command } from '../../voice/commands';
import type { Offer } from './offer';
import { padLines } from './pad-lines';

const pad = (phrase: string, rules: Partial<Offer> = {}): Offer => ({
  phrase,
  onpress: () => undefined,
  ...rules,
});
const says = (command: Command, rules: Partial<Offer> = {}) => pad(command, { command, ...rules });
const always = [
  says('again'),
  says('wait', { folded: 'where narrow' }),
  says('why', { folded: 'where narrow' }),
  says('what can I say'),
  says('something went wrong'),
];
const shut = pad('go on now', { disabled: true });
const phrases = (offers: readonly Offer[]) =>
  padLines(offers).lines.map(({ of }) => of.map(({ phrase }) => phrase));
const ANY_TIME = always.map(({ phrase }) => phrase);

describe('the lines of the pads', () => {
  test('keep answers apart from what stands at any time', () =>
    expect(phrases([says('yes'), says('no'), ...always])).toEqual([['yes', 'no'], ANY_TIME]));

  test('count on from each other, so that the digits go on', () =>
    expect(padLines([says('yes'), says('no'), ...always]).lines.map(({ from }) => from)).toEqual([0, 2]));

  test('are one, where nothing is asked', () => expect(phrases(always)).toEqual([ANY_TIME]));

  test('show a way that is shut beside the one answer there is', () => {
    const offers = [says('new reading', { main: true }), shut, ...always];
    expect(phrases(offers)[0]).toEqual(['new reading', 'go on now']);
    expect(padLines(offers).beside).toBe(true);
  });

  test('have a way that is shut give its place up to two answers', () =>
    expect(phrases([says('yes'), says('no'), shut, ...always])[0]).toEqual(['yes', 'no']));

  test('keep an answer in its place while the guide still speaks', () =>
    expect(
      phrases([says('yes', { disabled: true }), says('no', { disabled: true }), pad('look'), ...always])[0],
    ).toEqual(['yes', 'no', 'look']));
});

test('two answers of equal weight are as high as a main pad; none is while there is one', () => {
  expect(padLines([says('yes'), says('no'), ...always]).tall).toBe(true);
  expect(padLines([says('done', { main: true }), ...always]).tall).toBe(false);
});

test('what a phone cannot hold in two lines is told apart from what it can', () => {
  expect(padLines([says('yes'), says('no'), ...always]).full).toBe(false);
  expect(padLines([says('yes'), says('no'), shut, ...always]).full).toBe(true);
});
