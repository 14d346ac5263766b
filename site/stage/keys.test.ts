import { expect, it } from 'vitest';
import { stageCommand } from './keys.ts';

const press = (key: string, more: object = {}) => stageCommand({ key, target: null, ...more } as KeyboardEvent);

it.each([
  ['PageDown', 1],
  [' ', 1],
  ['ArrowRight', 1],
  ['PageUp', -1],
  ['Home', -Infinity],
  ['End', Infinity],
])('“%s” goes by %d', (key, by) => {
  expect(press(key)).toEqual({ kind: 'go', by });
});

it('digits, then Enter, name a step', () => {
  expect(press('7')).toEqual({ kind: 'digit', digit: '7' });
  expect(press('Enter')).toEqual({ kind: 'enter' });
});

it.each([
  ['r', 'run'],
  ['M', 'more'],
])('“%s” presses what the figure has of that kind', (key, what) => {
  expect(press(key)).toEqual({ kind: 'press', what });
});

it('leaves keys with a modifier, and others, to the browser', () => {
  expect(press('PageDown', { ctrlKey: true })).toBeUndefined();
  expect(press('f', { metaKey: true })).toBeUndefined();
  expect(press('Tab')).toBeUndefined();
});
