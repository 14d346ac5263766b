import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { focusDistance } from './focus-distance.formula.ts';

const lens = { focalLength: 50, principalSeparation: 0 };

describe('focusDistance', () => {
  it('is four focal lengths at life size', () => {
    expect(focusDistance({ ...lens, magnification: 1 })).toBe(200);
  });

  it('is the same at a magnification and at one over it', () => {
    const small = focusDistance({ ...lens, magnification: 0.2 });
    const large = focusDistance({ ...lens, magnification: 5 });
    expect(large).toEqual(closeTo(small, { relative: 1e-15, because: 'one rounding' }));
  });

  it('moves by just what the principal planes move apart', () => {
    expect(focusDistance({ ...lens, magnification: 1, principalSeparation: -12 })).toBe(188);
  });

  it('tends to the subject distance plus a focal length as the subject goes away', () => {
    const far = focusDistance({ ...lens, magnification: 1e-9 });
    expect(far).toEqual(closeTo(50e9 + 100, { relative: 1e-15, because: 'what is left is f m' }));
  });

  it('refuses a separation that puts the subject behind the sensor', () => {
    const crossed = { focalLength: 4, magnification: 1, principalSeparation: -16 };
    expect(() => focusDistance(crossed)).toThrow(OutOfRange);
    expect(() => focusDistance(crossed)).toThrow(/principal-separation is -16/);
  });
});
