import { afterEach, expect, test } from 'vitest';
import { arriveAt } from './arrive-at';

const inPage = <Tag extends 'h1' | 'button'>(tag: Tag): HTMLElementTagNameMap[Tag] => {
  const element = document.createElement(tag);
  element.tabIndex = -1;
  return document.body.appendChild(element);
};
const nextFrame = () => new Promise((resolve) => requestAnimationFrame(resolve));

afterEach(() => document.body.replaceChildren());

test('the focus goes to the words that arrive, from nowhere or from the pad that was pressed', async () => {
  const [heading, pad] = [inPage('h1'), inPage('button')];
  for (const from of [undefined, pad]) {
    heading.blur();
    from?.focus();
    arriveAt('Stir it in')(heading);
    await nextFrame();
    expect(document.activeElement).toBe(heading);
  }
});

test('whoever goes elsewhere before the words are drawn stays there', async () => {
  const [heading, pad] = [inPage('h1'), inPage('button')];
  arriveAt('Stir it in')(heading);
  pad.focus();
  await nextFrame();
  expect(document.activeElement).toBe(pad);
});

test('words that are gone before they are drawn take no focus', async () => {
  const heading = inPage('h1');
  const leave = arriveAt('Stir it in')(heading);
  if (leave) leave();
  await nextFrame();
  expect(document.activeElement).toBe(document.body);
});
