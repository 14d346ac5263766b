import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { expect, test } from 'vitest';
import { withOwnAlphabets, withWoff2Only } from './katex-woff2.ts';

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

test('keeps the faces that formulas are set in and drops the other alphabets', () => {
  const kept = withOwnAlphabets(whole).match(/KaTeX_\w+-\w+\.woff2/g) ?? [];
  expect(kept.some((file) => /Fraktur|Script|Typewriter|SansSerif|Caligraphic/.test(file))).toBe(false);
  expect(kept).toEqual(
    expect.arrayContaining(['KaTeX_Main-Regular.woff2', 'KaTeX_Math-Italic.woff2', 'KaTeX_Size1-Regular.woff2']),
  );
});
