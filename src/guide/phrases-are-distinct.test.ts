import { describe, expect, test } from 'vitest';
import { guide } from '../text/en/guide';
import { COMMANDS, type Command } from '../voice/commands';

const owned = (Object.entries(guide.commands) as [Command, readonly string[]][]).flatMap(
  ([command, phrases]) => phrases.map((phrase) => ({ command, phrase })),
);
const within = (long: string, short: string): boolean => ` ${long} `.includes(` ${short} `);

describe('the phrases for commands', () => {
  test('are there for every command', () =>
    expect(COMMANDS.filter((command) => guide.commands[command].length === 0)).toEqual([]));

  test('belong to one command each, and none is heard inside another’s', () =>
    expect(
      owned.flatMap(({ command, phrase }) =>
        owned
          .filter((other) => other.command !== command && within(phrase, other.phrase))
          .map((other) => `${phrase} (${command}) holds ${other.phrase} (${other.command})`),
      ),
    ).toEqual([]));

  test('have two words or more: single ones are missed in noise', () =>
    expect(owned.filter(({ phrase }) => phrase.split(' ').length < 2)).toEqual([]));

  test('are spelled as they are spoken, without figures or signs', () =>
    expect(owned.filter(({ phrase }) => !/^[a-zA-Z’ ]+$/.test(phrase))).toEqual([]));
});
