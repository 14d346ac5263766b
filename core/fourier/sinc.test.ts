import { expect, it } from 'vitest';
import { sinc } from './sinc.ts';

it('is sin(a)/a on both sides, and its limit 1 at 0', () => {
  expect(sinc(0)).toBe(1);
  expect(sinc(1e-7)).toBe(1);
  expect(sinc(1e-3)).toBeCloseTo(1 - 1e-6 / 6, 13);
  expect(sinc(Math.PI / 2)).toBeCloseTo(2 / Math.PI, 15);
  expect(sinc(-1.5 * Math.PI)).toBeCloseTo(-2 / (3 * Math.PI), 15);
});
