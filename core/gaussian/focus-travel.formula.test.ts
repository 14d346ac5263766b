import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { focusTravel } from './focus-travel.formula.ts';
import { imageDistance } from './image-distance.formula.ts';

describe('focusTravel', () => {
  it('is 7.5 mm for 50 mm at 0.15', () => {
    expect(focusTravel({ focalLength: 50, magnification: 0.15 })).toBe(7.5);
  });

  it('is how much farther H′ is from the sensor than at infinity', () => {
    const lens = { focalLength: 90, magnification: 0.4 };
    const more = imageDistance(lens) - imageDistance({ ...lens, magnification: 0 });
    expect(focusTravel(lens)).toEqual(closeTo(more, { relative: 1e-14, because: 'one difference' }));
  });

  it('is nothing at infinity', () => {
    expect(focusTravel({ focalLength: 50, magnification: 0 })).toBe(0);
  });

  it('refuses a magnification below zero by name', () => {
    const refused = () => focusTravel({ focalLength: 50, magnification: -1 });
    expect(refused).toThrow(OutOfRange);
    expect(refused).toThrow(/magnification is -1/);
  });
});
