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

  test('presses nothing where nothing is on offer', () => expect(commandForKey(' ', [])).toBeUndefined());

  test('can be mapped otherwise', () => expect(commandForKey('b', OFFERED, { b: 'main' })).toBe('done'));
});
