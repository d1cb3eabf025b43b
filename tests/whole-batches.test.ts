import { describe, expect, test } from 'vitest';
import { daysBetween } from '../src/domain/calendar';
import { builtInSheets } from '../src/procedure/kits';
import { Maker } from './story/maker';

describe.each(builtInSheets)('$name', (sheet) => {
  test('a', () => {
    const m = new Maker(sheet);
    let last = '';
    for (let i = 0; i < 400 && m.place !== 'finished'; i++) {
      const line = `${m.place} | ${m.act?.id ?? ''}`;
      const p = m.act ? m.answer() : m.prove(m.place as never);
      console.log(line, m.day.toFixed(2), p ? JSON.stringify(p) : '');
      if (line === last && p) break;
      last = line;
    }
    expect(m.place).toBe('finished');
  });
});
void daysBetween;
