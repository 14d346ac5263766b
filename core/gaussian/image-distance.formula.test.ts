import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { imageDistance } from './image-distance.formula.ts';

describe('imageDistance', () => {
  it('is 75 mm for a 50 mm lens at half life size', () => {
    expect(imageDistance({ focalLength: 50, magnification: 0.5 })).toBe(75);
  });

  it('grows by one focal length for each unit of magnification', () => {
    const [at2, at3] = [2, 3].map((magnification) => imageDistance({ focalLength: 50, magnification }));
    expect(at3! - at2!).toBe(50);
  });

  it('tends to the focal length as the subject goes away', () => {
    const far = imageDistance({ focalLength: 50, magnification: 1e-9 });
    expect(far).toEqual(closeTo(50, { relative: 2e-9, because: 'the limit is approached as m' }));
  });

  it('is the focal length of a lens at infinity', () => {
    expect(imageDistance({ focalLength: 50, magnification: 0 })).toBe(50);
  });

  it('refuses a negative magnification and a negative focal length by name', () => {
    expect(() => imageDistance({ focalLength: 50, magnification: -1 })).toThrow(OutOfRange);
    expect(() => imageDistance({ focalLength: -50, magnification: 1 })).toThrow(/focal-length is -50/);
  });
});
