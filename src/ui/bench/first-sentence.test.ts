import { expect, test } from 'vitest';
import { firstSentence } from './first-sentence';

test('the clause is told apart from what follows from it', () =>
  expect(firstSentence('The wine reads 1.010. Leave it warm. Read it again.')).toEqual({
    first: 'The wine reads 1.010.',
    rest: 'Leave it warm. Read it again.',
  }));

test('a single sentence has nothing after it', () =>
  expect(firstSentence('It fell by 0.0039; 0.001 would count as unchanged.')).toEqual({
    first: 'It fell by 0.0039; 0.001 would count as unchanged.',
    rest: '',
  }));
