import { expect, test } from 'vitest';
import { rulesOf, sheetOf, usedRules } from './style-rules.ts';

const joined = (css: string, ...marks: string[]) =>
  sheetOf([...usedRules(rulesOf(css), (mark) => marks.includes(mark)).values()]);

test('gives back a style sheet with all that it groups and nests', () => {
  const css =
    '@font-face{font-family:A;src:url(a.woff2)}@layer base{p{margin:0}@media print{p{margin:1mm}q{margin:0}}}' +
    '.a{color:red;& b{color:blue}}@page{size:a4}@keyframes turn{to{rotate:1turn}}@media print{.a{color:#000}}';
  expect(joined(css)).toBe(css);
});

test('leaves out what is for components that are not there, wherever it stands', () => {
  const css =
    '.x.s1234{a:b}@media print{.x.sabcd{c:d}.y.s1234 .z:where(.s1234){e:f}}svg[data-astro-cid-q1]{g:h}.small{i:j}';
  expect(joined(css, 's1234')).toBe('.x.s1234{a:b}@media print{.y.s1234 .z:where(.s1234){e:f}}');
  expect(joined(css, 'sabcd', 'data-astro-cid-q1', 'small')).toBe(
    '@media print{.x.sabcd{c:d}}svg[data-astro-cid-q1]{g:h}.small{i:j}',
  );
});

test('keeps what some of its selectors may be for', () => {
  expect(joined('.x.s1234,.x.sabcd{a:b}', 'sabcd')).toBe('.x.s1234,.x.sabcd{a:b}');
  expect(joined('.x:not(.s1234){a:b}')).toBe('.x:not(.s1234){a:b}');
});

test('says once, and last, what stood twice', () => {
  expect(joined('p{a:b}q{c:d}@media print{p{a:b}}p{a:b}')).toBe('q{c:d}@media print{p{a:b}}p{a:b}');
});
