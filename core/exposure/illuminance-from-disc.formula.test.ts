import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { illuminanceByInverseSquare } from './illuminance-by-inverse-square.formula.ts';
import { illuminanceFromDisc } from './illuminance-from-disc.formula.ts';

/** A diffuser 100 mm wide at half its width. */
const diffuser = { luminance: 1000, sourceSize: 100, flashDistance: 50 };

describe('illuminanceFromDisc', () => {
  it('is half of π L_v at half a diameter', () => {
    expect(illuminanceFromDisc(diffuser)).toEqual(
      closeTo(500 * Math.PI, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('is the same for a disc twice as wide at twice the distance', () => {
    expect(illuminanceFromDisc({ luminance: 1000, sourceSize: 200, flashDistance: 100 })).toEqual(
      closeTo(500 * Math.PI, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('never exceeds π L_v', () => {
    expect(illuminanceFromDisc({ ...diffuser, flashDistance: 1e-9 })).toEqual(
      closeTo(1000 * Math.PI, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('tends to the inverse square law far away', () => {
    const far = { ...diffuser, flashDistance: 1e6 };
    expect(illuminanceFromDisc(far)).toEqual(
      closeTo(illuminanceByInverseSquare(far), { relative: 3e-9, because: 'they part by (S_w/2d)²' }),
    );
  });

  it('refuses a subject in the disc by name', () => {
    expect(() => illuminanceFromDisc({ ...diffuser, flashDistance: 0 })).toThrow(OutOfRange);
    expect(() => illuminanceFromDisc({ ...diffuser, flashDistance: 0 })).toThrow(/flash-distance is 0/);
  });
});
