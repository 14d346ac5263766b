import { expect, it } from 'vitest';
import { closeTo } from '#tests/support/close-to.ts';
import { distanceToText, textWidth } from './digits.ts';

const rounding = { absolute: 1e-12, because: 'rounding' };

it('the way to a numeral is the shortest to any of its strokes, along them and beyond their ends', () => {
  // 1: upright from (2, 0) to (2, 6), and a flag from (1, 1) to (2, 0).
  expect(distanceToText('1', 2, 3)).toBe(0);
  expect(distanceToText('1', 3.5, 3)).toEqual(closeTo(1.5, rounding));
  expect(distanceToText('1', 0.5, 4)).toEqual(closeTo(1.5, rounding));
  expect(distanceToText('1', 2, 6.8)).toEqual(closeTo(0.8, rounding));
  expect(distanceToText('1', 2.3, -0.4)).toEqual(closeTo(0.5, rounding));
  expect(distanceToText('1', 1.5, 0.5)).toEqual(closeTo(0, rounding));
  expect(distanceToText('1', 1, 0.5)).toEqual(closeTo(Math.hypot(0.25, 0.25), rounding));
});

it('numerals stand beside each other, six apart, each with its own place', () => {
  for (const y of [0, 2, 5.5]) {
    expect(distanceToText('71', 8, y)).toEqual(closeTo(distanceToText('1', 2, y), rounding));
    expect(distanceToText('71', 0.3, y)).toEqual(closeTo(distanceToText('7', 0.3, y), rounding));
    // The space before a numeral is its own.
    expect(distanceToText('71', 5.2, y)).toEqual(closeTo(distanceToText('1', -0.8, y), rounding));
  }
  expect([textWidth('7'), textWidth('25')]).toEqual([4, 10]);
});

it('there is no way to a text from far away, nor to what is no numeral', () => {
  for (const [x, y] of [
    [2, -1.1],
    [2, 7.1],
    [-1.1, 3],
    [5.1, 3],
  ] as const)
    expect(distanceToText('8', x, y)).toBe(Infinity);
  expect(distanceToText('8', 2, -1)).toBeLessThan(2);
  expect(distanceToText('8', 2, 7)).toBeLessThan(2);
  expect(distanceToText('x', 2, 3)).toBe(Infinity);
});

it('every numeral has strokes, fills its height, and keeps to its width', () => {
  for (const digit of '0123456789') {
    const places = Array.from({ length: 41 * 61 }, (_, at) => [(at % 41) / 10, Math.floor(at / 41) / 10] as const);
    const inked = places.filter(([x, y]) => distanceToText(digit, x, y) < 0.1);
    expect(inked.length, digit).toBeGreaterThan(60);
    expect(Math.min(...inked.map(([, y]) => y)), digit).toBeLessThan(0.2);
    expect(Math.max(...inked.map(([, y]) => y)), digit).toBeGreaterThan(5.8);
    expect(distanceToText(digit, -0.5, 3), digit).toBeGreaterThanOrEqual(0.5);
    expect(distanceToText(digit, 4.5, 3), digit).toBeGreaterThanOrEqual(0.5);
  }
});
