import { expect, test } from 'vitest';
import { FakeEars } from '../../../tests/story/fake-ears';
import { ChosenEars } from './chosen-ears';

test('those that are chosen when they are turned on hear what is on offer, and tell what they hear', async () => {
  const [first, second] = [new FakeEars(), new FakeEars()];
  let chosen = first;
  const ears = new ChosenEars(() => chosen);
  let told: string[] = [];
  ears.subscribe((news) => {
    if (news.type === 'heard') told.push(news.hearing?.words ?? '');
  });
  ears.listenFor('what is on offer');
  await ears.turnOn();
  expect([ears.state, first.grammar]).toEqual(['listening', 'what is on offer']);

  chosen = second;
  await ears.turnOn();
  expect(second.state).toBe('off');
  ears.turnOff();
  await ears.turnOn();
  expect([first.state, second.state, second.grammar]).toEqual(['off', 'listening', 'what is on offer']);

  told = [];
  first.hear('of no account');
  second.hear('that is done');
  expect(told).toEqual(['that is done']);
});
