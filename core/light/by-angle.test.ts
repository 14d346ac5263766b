import { describe, expect, it } from 'vitest';
import { byAngle } from './by-angle.ts';

describe('a table by angle', () => {
  it('gives what it was made of at whole degrees, the ends among them', () => {
    const square = byAngle((angle) => angle ** 2);
    for (const degree of [0, 1, 45, 90, 179, 180]) {
      const angle = (Math.PI * degree) / 180;
      expect(square(Math.cos(angle))).toBeCloseTo(angle ** 2, 12);
    }
  });

  it('is straight between two degrees', () => {
    const square = byAngle((angle) => angle ** 2);
    const [one, two] = [Math.PI / 180, (2 * Math.PI) / 180];
    expect(square(Math.cos(1.5 * one))).toBeCloseTo((one ** 2 + two ** 2) / 2, 12);
  });

  it('takes a cosine that rounding has carried past its end for the end', () => {
    const angle = byAngle((one) => one);
    expect(angle(1 + 1e-12)).toBe(0);
    expect(angle(-1 - 1e-12)).toBeCloseTo(Math.PI, 12);
  });
});
