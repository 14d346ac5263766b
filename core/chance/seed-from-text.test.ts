import { expect, it } from 'vitest';
import { seedFromText } from './seed-from-text.ts';

it.each([
  ['', 0x811c9dc5],
  ['a', 0xe40c292c],
  ['foobar', 0xbf9cf968],
])('gives for “%s” the value in the test vectors of FNV-1a (draft-eastlake-fnv)', (text, hash) => {
  expect(seedFromText(text)).toBe(hash);
});
