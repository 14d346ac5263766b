import { describe, expect, it } from 'vitest';
import { widthOf } from './width.ts';

describe('the width of a formula', () => {
  it('is that of its wider half where one stands above the other', () => {
    expect(widthOf('\\frac{abcd}{e}')).toBeCloseTo(widthOf('\\frac{abcd}{efgh}'), 10);
  });

  it('is that of its widest line', () => {
    const [short, long] = ['a = b', 'a = b + c'];
    expect(widthOf(`\\begin{aligned}${short} \\\\ ${long}\\end{aligned}`)).toBeCloseTo(widthOf(long), 10);
  });

  it('grows with every letter, sign and number, those within brackets and roots too', () => {
    for (const [less, more] of [
      ['a = b', 'a = bc'],
      ['a', '\\sqrt{a}'],
      ['\\left(a\\right)', '\\left(a + b\\right)'],
      ['\\text{12}', '\\text{123}'],
      ['a', 'a^2'],
      ['x', '\\arccos x'],
    ] as const) {
      expect(widthOf(more), more).toBeGreaterThan(widthOf(less));
    }
  });
});
