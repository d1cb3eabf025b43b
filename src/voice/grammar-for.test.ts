import { describe, expect, test } from 'vitest';
import { grammarFor } from './grammar-for';

const decoys = { words: ['kettle', 'weather'], weight: 1e-24 };

describe('what the engine listens for', () => {
  test('is the phrases on offer, in the dictionary’s spelling, and any row of decoys', () =>
    expect(grammarFor({ phrases: ['I have finished', 'no it isn’t'], decoys })).toBe(
      [
        '#JSGF V1.0;',
        'grammar ears;',
        "public <heard> = i have finished | no it isn't | <decoy>+;",
        '<decoy> = /1e-24/ kettle | /1e-24/ weather;',
        '',
      ].join('\n'),
    ));

  test('has a number only where one is asked, and only in its range', () => {
    const asked = { kind: 'count', lowest: 11, highest: 12 } as const;
    expect(grammarFor({ phrases: ['say that again'], decoys })).not.toContain('number');
    expect(grammarFor({ phrases: ['say that again'], numbers: asked, decoys })).toContain(
      'say that again | <number> | <decoy>+;\n<number> = (eleven | twelve);',
    );
  });

  test('can do without decoys', () =>
    expect(grammarFor({ phrases: ['say that again'], decoys: { words: [], weight: 1 } })).toBe(
      '#JSGF V1.0;\ngrammar ears;\npublic <heard> = say that again;\n',
    ));
});
