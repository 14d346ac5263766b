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

it.each([
  ['b', 'blank'],
  ['B', 'blank'],
  ['.', 'blank'],
  ['f', 'full-screen'],
  ['Escape', 'leave'],
])('“%s” means %s', (key, kind) => {
  expect(press(key)).toEqual({ kind });
});

/** What has the focus, by the one selector of those asked for that it answers to. */
const focused = (role: string) => ({ closest: (asked: string) => (asked.includes(role) ? {} : null) });

it('leaves arrows to a slider that has the focus, and Space and Enter to a button; all else means the same there', () => {
  const [slider, button] = ['[role=slider]', 'button'].map((role) => ({ target: focused(role) })) as [object, object];
  for (const key of ['ArrowLeft', 'ArrowRight', 'ArrowUp', 'ArrowDown']) {
    expect(press(key, slider)).toBeUndefined();
    expect(press(key, button)).toMatchObject({ kind: 'go' });
  }
  for (const key of [' ', 'Enter']) {
    expect(press(key, button)).toBeUndefined();
    expect(press(key, slider)).toEqual(press(key));
  }
  for (const key of ['PageDown', 'PageUp', 'Home', 'End', 'b', '.', 'Escape', '7'])
    for (const where of [slider, button]) expect(press(key, where)).toEqual(press(key));
});

it('leaves keys with a modifier, and others, to the browser', () => {
  expect(press('PageDown', { ctrlKey: true })).toBeUndefined();
  expect(press('f', { metaKey: true })).toBeUndefined();
  expect(press('Tab')).toBeUndefined();
});
