import { describe, expect, test } from 'vitest';
import { grammarAgainst, grammarFor } from './grammar-for';

describe('what the engine listens for', () => {
  test('is the phrases on offer, in the dictionary’s spelling', () =>
    expect(grammarFor({ phrases: ['I have finished', 'no it isn’t'] })).toBe(
      "#JSGF V1.0;\ngrammar ears;\npublic <heard> = i have finished | no it isn't;\n",
    ));

  test('has a number only where one is asked, and only in its range', () => {
    const numbers = { kind: 'count', lowest: 11, highest: 12 } as const;
    expect(grammarFor({ phrases: ['say that again'] })).not.toContain('number');
    expect(grammarFor({ phrases: ['say that again'], numbers })).toContain(
      'say that again | <number>;\n<number> = (eleven | twelve);',
    );
  });

  test('is set against any row of decoys, and what is a phrase elsewhere', () =>
    expect(
      grammarAgainst({ phrases: ['yes it is'] }, ['yes it is', 'I am ready'], ['kettle', 'weather']),
    ).toBe(
      '#JSGF V1.0;\ngrammar ears;\npublic <talk> = <decoy>+ | i am ready;\n<decoy> = kettle | weather;\n',
    ));
});
