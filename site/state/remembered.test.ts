import { expect, test } from 'vitest';
import { remembered } from './remembered.ts';

test('what was made is not made again, until there is more than is kept', () => {
  const made: string[] = [];
  const keep = remembered<{ readonly key: string }>(1);
  const ask = (key: string) => keep(key, () => (made.push(key), { key }));
  const one = ask('one');
  expect(ask('one')).toBe(one);
  ask('two');
  expect(ask('one')).toBe(one);
  ask('three');
  expect(ask('one')).toEqual(one);
  expect(made).toEqual(['one', 'two', 'three', 'one']);
});
