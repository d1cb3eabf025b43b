import { describe, expect, test } from 'vitest';
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

  test('can be mapped otherwise', () => expect(commandForKey('b', OFFERED, { b: 'main' })).toBe('done'));
});
