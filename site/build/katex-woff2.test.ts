import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { everyFormulaMarkup, formulaParts } from './formula-markup.ts';
import { withOwnClasses, withOwnFaces, withWoff2Only } from './katex-woff2.ts';

const path = createRequire(import.meta.url).resolve('katex/dist/katex.min.css');
const whole = readFileSync(path, 'utf8');
const files = (css: string, extension: string) =>
  css.match(new RegExp(`url\\([^)]+\\.${extension}\\)`, 'g'))?.length ?? 0;

test('drops every woff and ttf file of the installed style sheet, and only those', () => {
  const trimmed = withWoff2Only(whole);
  expect(files(whole, 'woff')).toBeGreaterThan(0);
  expect(files(trimmed, 'woff')).toBe(0);
  expect(files(trimmed, 'ttf')).toBe(0);
  expect(files(trimmed, 'woff2')).toBe(files(whole, 'woff2'));
  expect(trimmed.match(/@font-face\{[^}]*src:url\([^)]+\.woff2\) format\("woff2"\)\}/g)?.length).toBe(
    files(whole, 'woff2'),
  );
});

test('keeps the faces that formulas are set in and drops the others', () => {
  const kept = withOwnFaces(whole, new Set(['Main-Regular', 'Size1-Regular'])).match(/KaTeX_\w+-\w+\.woff2/g);
  expect(kept).toEqual(['KaTeX_Main-Regular.woff2', 'KaTeX_Size1-Regular.woff2']);
});

test('keeps the rules for classes that formulas have, each for those alone', () => {
  const css = '.k{a:b}.k .x,.k .y{c:d}.k .z:not(.w,.v){e:f}.k .z.w{g:h}body{i:j}';
  expect(withOwnClasses(css, new Set(['k', 'y', 'z']))).toBe('.k{a:b}.k .y{c:d}.k .z:not(.w,.v){e:f}body{i:j}');
});

test('finds what formulas are made of in a page and in a script', async () => {
  const formula =
    '<span class="katex"><span class="katex-html"><span class="mord mathnormal">m</span>&lt;2</span></span>';
  for (const markup of [`<p>a ${formula} b</p>`, JSON.stringify(formula)]) {
    const { faces, classes } = formulaParts(markup);
    expect(Object.fromEntries(faces)).toEqual({ 'Math-Italic': 'm', 'Main-Regular': '2<' });
    expect([...classes]).toEqual(['katex', 'katex-html', 'mord', 'mathnormal']);
  }
  expect(formulaParts(await everyFormulaMarkup()).faces.get('Main-Regular')).toMatch(/^\(\).*=.*×/);
});
