import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { focusDistance } from './focus-distance.formula.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { nearestFocusDistance } from './nearest-focus-distance.formula.ts';

describe('nearestFocusDistance', () => {
  it('is 200 mm for a thin 50 mm lens', () => {
    expect(nearestFocusDistance({ focalLength: 50, principalSeparation: 0 })).toBe(200);
  });

  it('is the focus distance at life size, and no magnification beats it', () => {
    const lens = { focalLength: 85, principalSeparation: 11 };
    const nearest = nearestFocusDistance(lens);
    expect(focusDistance({ ...lens, magnification: 1 })).toBe(nearest);
    for (const magnification of [0.02, 0.5, 0.99, 1.01, 2, 20]) {
      expect(focusDistance({ ...lens, magnification })).toBeGreaterThan(nearest);
    }
  });

  it('shrinks to nothing with the lens', () => {
    const tiny = nearestFocusDistance({ focalLength: 1e-9, principalSeparation: 0 });
    expect(tiny).toEqual(closeTo(0, { absolute: 1e-8, because: 'four focal lengths are 4e-9 mm' }));
  });

  it('refuses a separation that leaves no distance', () => {
    expect(() => nearestFocusDistance({ focalLength: 4, principalSeparation: -20 })).toThrow(OutOfRange);
    expect(() => nearestFocusDistance({ focalLength: 4, principalSeparation: -20 })).toThrow(
      /principal-separation is -20/,
    );
  });
});
