import { expect, test } from '@playwright/test';
import { globSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { everyFormulaMarkup, formulaParts } from '#site/build/formula-markup.ts';
import { dist } from '../bench/built.ts';
import { limits } from '../bench/limits.ts';
import { jsLimitOf, laterJsLimitOf, weightOf } from '../bench/weight.ts';
import { lessons } from './pages.ts';

// Read from the built files: no page is opened.
test('no lesson sends more than a lesson may', () => {
  const found = lessons.map((path) => ({ path, ...weightOf(path) }));
  // A page whose scripts were not found would weigh nothing.
  expect(Math.min(...found.map(({ js, laterJs }) => Math.min(js, 10 * laterJs)))).toBeGreaterThan(40_000);
  const heavy = found.flatMap(({ path, html, js, laterJs, css, picture }) => [
    ...(html > limits.html ? [`${path} is ${html} bytes by itself`] : []),
    ...(js > jsLimitOf(path) ? [`${path} loads ${js} bytes by itself, of ${jsLimitOf(path)}`] : []),
    ...(laterJs > laterJsLimitOf(path, picture)
      ? [`${path} can come to load ${laterJs} bytes more, of ${laterJsLimitOf(path, picture)}`]
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

test('the bench fetches formulas, glass and the projected view when they are wanted', () => {
  const { js, laterJs } = weightOf('bench/');
  expect(js).toBeLessThan(limits.benchJs);
  expect(laterJs).toBeGreaterThan(50_000);
});

test('no other page beside the lessons loads what it has no use for', () => {
  for (const [page, most] of Object.entries(limits.pagesJs)) expect(weightOf(`${page}/`).js, page).toBeLessThan(most);
});

test('fonts hold no more than is set in them', () => {
  const sizes = globSync('_astro/*.woff2', { cwd: dist }).map((name) => statSync(join(dist, name)).size);
  expect(sizes.length).toBeGreaterThan(2);
  expect(sizes.reduce((sum, size) => sum + size)).toBeLessThan(limits.fonts);
});

test('formulas are set in letters and by rules that faces and styles have been left', async () => {
  const built = globSync('{**/*.html,_astro/*.js}', { cwd: dist }).map((name) =>
    readFileSync(join(dist, name), 'utf8').replaceAll('\\xA0', '\u00a0'),
  );
  const set = formulaParts(built.join(''));
  expect(set.faces.get('Math-Italic')).toMatch(/N.*f.*m.*λ/s);
  const left = formulaParts(await everyFormulaMarkup());
  const missing = [...set.faces].flatMap(([face, characters]) =>
    [...characters].filter((one) => !left.faces.get(face)?.includes(one)).map((one) => `${one} of ${face}`),
  );
  expect(missing).toEqual([]);
  expect([...set.classes].filter((name) => !left.classes.has(name))).toEqual([]);
});
