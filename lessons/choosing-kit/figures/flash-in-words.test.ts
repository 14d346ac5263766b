import { expect, it } from 'vitest';
import { flashInWords } from './flash-in-words.ts';

it.each([
  [1 / 538, 'under 1/128 of the flash'],
  [1 / 128.01, 'under 1/128 of the flash'],
  [1 / 127.2, '1/130 of the flash'],
  [1 / 47.4, '1/47 of the flash'],
  [0.4, '1/2.5 of the flash'],
  [0.999, 'all of the flash'],
  [1.02, 'all of the flash'],
  [2.34, '2.3 times the flash'],
])('of the flash %d is said in one unit: %s', (share, words) => {
  expect(flashInWords(share)).toBe(words);
});
