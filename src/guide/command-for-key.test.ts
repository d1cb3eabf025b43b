import { describe, expect, test } from 'vitest';
import type { Keys } from '../domain/key-preferences';
import type { Command } from '../voice/commands';
import { commandForKey } from './command-for-key';

const OFFERED: readonly Command[] = ['done', 'again', 'back', 'wait'];

describe('a key', () => {
  test.each<[string, Command | undefined]>([
    [' ', 'done'],
    ['Enter', 'done'],
    ['PageDown', 'done'],
    ['MediaPlayPause', 'done'],
    ['PageUp', 'back'],
    ['Backspace', 'back'],
    ['r', 'again'],
    ['R', 'again'],
    ['1', 'done'],
    ['4', 'wait'],
    ['5', undefined],
    ['0', undefined],
    ['l', undefined],
    ['x', undefined],
  ])('%j presses %s', (key, command) => expect(commandForKey(key, OFFERED)).toBe(command));

  test('of the way back answers a question with no', () =>
    expect(commandForKey('PageUp', ['yes', 'no', 'again', 'back'])).toBe('no'));

  test('presses a pad that only a screen has', () =>
    expect(commandForKey<string>(' ', ['read it back', 'again'])).toBe('read it back'));

  test('presses nothing where nothing is on offer', () => expect(commandForKey(' ', [])).toBeUndefined());

  describe('that the maker mapped', () => {
    test.each<[string, Keys, string, Command | undefined]>([
      ['a new key', { b: 'main' }, 'b', 'done'],
      ['a letter with Shift', { b: 'main' }, 'B', 'done'],
      ['a pedal of its own', { F13: 'back' }, 'F13', 'back'],
      ['a key that was another action’s', { PageDown: 'again' }, 'PageDown', 'again'],
      ['a first key that was left alone', { PageDown: 'again' }, ' ', 'done'],
      ['a key for what is not on offer', { b: 'how long' }, 'b', undefined],
      ['a key for the ears', { b: 'ears' }, 'b', undefined],
      ['a digit, which stays its pad’s', { 2: 'main' }, '2', 'again'],
    ])('%s: %j, %j presses %s', (_, own, key, command) =>
      expect(commandForKey(key, OFFERED, own)).toBe(command),
    );

    test('to the way back answers a question with no', () =>
      expect(commandForKey('b', ['yes', 'no', 'back'], { b: 'back' })).toBe('no'));
  });
});
