import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { illuminanceFromDisc } from './illuminance-from-disc.formula.ts';
import { illuminanceByInverseSquare } from './illuminance-by-inverse-square.formula.ts';

/** A diffuser 100 mm wide at half its width. */
const diffuser = { luminance: 1000, sourceSize: 100, flashDistance: 50 };

describe('illuminanceByInverseSquare', () => {
  it('promises π L_v at half a diameter, twice the truth', () => {
    expect(illuminanceByInverseSquare(diffuser)).toEqual(
      closeTo(1000 * Math.PI, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('is four times as much at half the distance', () => {
    expect(illuminanceByInverseSquare({ ...diffuser, flashDistance: 25 })).toEqual(
      closeTo(4000 * Math.PI, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('promises too much by 1 + (S_w/2d)²', () => {
    const at = { ...diffuser, flashDistance: 500 };
    expect(illuminanceByInverseSquare(at) / illuminanceFromDisc(at)).toEqual(
      closeTo(1.01, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('refuses a subject in the disc by name', () => {
    expect(() => illuminanceByInverseSquare({ ...diffuser, flashDistance: 0 })).toThrow(OutOfRange);
    expect(() => illuminanceByInverseSquare({ ...diffuser, flashDistance: 0 })).toThrow(/flash-distance is 0/);
  });
});
