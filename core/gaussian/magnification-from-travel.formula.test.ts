import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { imageDistance } from './image-distance.formula.ts';
import { magnificationFromTravel } from './magnification-from-travel.formula.ts';

describe('magnificationFromTravel', () => {
  it('is 0.15 for a 50 mm lens that stands 7.5 mm out', () => {
    expect(magnificationFromTravel({ focusTravel: 7.5, focalLength: 50 })).toBe(0.15);
  });

  it('is the travel with which the sensor stands in the image plane, for any lens', () => {
    for (const focalLength of [18, 50, 200]) {
      for (const focusTravel of [0.3, 9, 260]) {
        const magnification = magnificationFromTravel({ focusTravel, focalLength });
        const travel = imageDistance({ focalLength, magnification }) - focalLength;
        expect(travel).toEqual(closeTo(focusTravel, { relative: 1e-12, because: 'a difference of rounded numbers' }));
      }
    }
  });

  it('is nothing at infinity, and life size after one focal length', () => {
    expect(magnificationFromTravel({ focusTravel: 0, focalLength: 50 })).toBe(0);
    expect(magnificationFromTravel({ focusTravel: 50, focalLength: 50 })).toBe(1);
  });

  it('refuses a lens pushed in past infinity, and one without focal length, by name', () => {
    expect(() => magnificationFromTravel({ focusTravel: -1, focalLength: 50 })).toThrow(OutOfRange);
    expect(() => magnificationFromTravel({ focusTravel: -1, focalLength: 50 })).toThrow(/focus-travel is -1/);
    expect(() => magnificationFromTravel({ focusTravel: 1, focalLength: 0 })).toThrow(/focal-length is 0/);
  });
});
