import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { airyDiameter, firstDarkRing } from './airy-diameter.formula.ts';
import { besselJ1 } from './bessel.ts';

const green = { wavelength: 0.00055, effectiveFNumber: 16 };

describe('airyDiameter', () => {
  it('is 21.5 µm in green light at an effective f/16', () => {
    expect(airyDiameter(green)).toEqual(closeTo(0.0215, { absolute: 5e-5, because: 'three figures printed' }));
  });

  it('uses a factor that is the first zero of J1 over π to its last digit', () => {
    expect(Math.abs(besselJ1(Math.PI * firstDarkRing))).toBeLessThan(1e-15);
    expect(besselJ1(Math.PI * (firstDarkRing - 1e-14))).toBeGreaterThan(0);
    expect(besselJ1(Math.PI * (firstDarkRing + 1e-14))).toBeLessThan(0);
  });

  it('doubles when the effective f-number or the wavelength doubles', () => {
    expect(airyDiameter({ ...green, effectiveFNumber: 32 })).toBe(2 * airyDiameter(green));
    expect(airyDiameter({ ...green, wavelength: 0.0011 })).toBe(2 * airyDiameter(green));
  });

  it('tends to nothing as the wavelength does, where geometry takes over', () => {
    expect(airyDiameter({ ...green, wavelength: 1e-12 })).toBeLessThan(1e-10);
  });

  it('refuses a wavelength of zero and an f-number below zero by name', () => {
    expect(() => airyDiameter({ ...green, wavelength: 0 })).toThrow(OutOfRange);
    expect(() => airyDiameter({ ...green, effectiveFNumber: -8 })).toThrow(/effective-f-number is -8/);
  });
});
