import { expect, test } from 'vitest';
import { wordsIn } from './grammar-words';

test('the words of a grammar are all that can be heard by it, once', () =>
  expect(
    wordsIn(`#JSGF V1.0;
grammar offered;
// Commands first.
public <heard> = <command> | (/1e-24/ found | /0.5/ don't)+;
<command> = that is done {done} | [now] that is <what> ; /* the end */
<what> = "why"*;
`),
  ).toEqual(['found', "don't", 'that', 'is', 'done', 'now', 'why']));
