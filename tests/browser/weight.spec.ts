import { expect, test } from '@playwright/test';
import { limits } from '../bench/limits.ts';
import { jsLimitOf, weightOf } from '../bench/weight.ts';
import { lessons } from './pages.ts';

// Read from the built files: no page is opened.
test('no lesson sends more JavaScript and styles than a lesson may', () => {
  const found = lessons.map((path) => ({ path, ...weightOf(path) }));
  // A page whose scripts were not found would weigh nothing.
  expect(Math.min(...found.map(({ js, laterJs }) => Math.min(js, 10 * laterJs)))).toBeGreaterThan(40_000);
  const heavy = found.flatMap(({ path, js, laterJs, css, picture }) => [
    ...(js > jsLimitOf(path) ? [`${path} loads ${js} bytes by itself, of ${jsLimitOf(path)}`] : []),
    ...(laterJs > limits.laterJs[picture ? 'picture' : 'plain'] + limits.kitJs
      ? [`${path} can come to load ${laterJs} bytes more`]
      : []),
    ...(css > limits.css ? [`${path} names ${css} bytes of styles`] : []),
  ]);
  expect(heavy).toEqual([]);
});

test('the page that measures photographs fetches what opens one when one is opened', () => {
  const { js, laterJs } = weightOf('ruler/');
  expect(js).toBeLessThan(limits.rulerJs);
  expect(laterJs).toBeGreaterThan(50_000);
});
