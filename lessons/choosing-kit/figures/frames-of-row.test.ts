import { expect, it } from 'vitest';
import { framesInWords } from './frames-of-row.ts';

it.each([
  [1, '1 frame'],
  [356, '356 frames'],
  [20_000, 'over 10000 frames'],
])('%d frames are said as %s', (count, words) => {
  expect(framesInWords(count)).toBe(words);
});
