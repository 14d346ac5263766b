import { describe, expect, it } from 'vitest';
import { waveDepth } from '#core/depth/wave-depth.formula.ts';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { defocusAberrationOfDepth } from './defocus-aberration-of-depth.formula.ts';
import { defocusAberration } from './defocus-aberration.formula.ts';

const wavelength = 0.0005;

describe('defocusAberrationOfDepth', () => {
  it('is two waves over 10 µm in the cone with sides 3, 4, 5', () => {
    // 5 µm × (1 − 4/5) is 1 µm.
    expect(defocusAberrationOfDepth({ subjectDepth: 0.01, numericalAperture: 0.6, wavelength })).toEqual(
      closeTo(2, { relative: 1e-14, because: 'a few roundings' }),
    );
  });

  it('is a quarter wave over the wave depth of a slender cone, and more for a wide one', () => {
    const over = (numericalAperture: number) =>
      defocusAberrationOfDepth({
        subjectDepth: waveDepth({ wavelength, numericalAperture }),
        numericalAperture,
        wavelength,
      });
    expect(over(0.01)).toEqual(closeTo(0.25, { relative: 3e-5, because: 'the next term is NA²/4' }));
    expect(over(0.25) / 0.25).toEqual(closeTo(1.016, { absolute: 5e-4, because: 'stated in per cent to one decimal' }));
  });

  it('is what the blur of the ends says, where cones are slender on both sides', () => {
    const [magnification, effectiveFNumber, subjectDepth] = [0.5, 16, 2];
    const defocusBlur = (magnification ** 2 * (subjectDepth / 2)) / effectiveFNumber;
    const numericalAperture = magnification / (2 * effectiveFNumber);
    expect(defocusAberrationOfDepth({ subjectDepth, numericalAperture, wavelength })).toEqual(
      closeTo(defocusAberration({ defocusBlur, wavelength, effectiveFNumber }), {
        relative: 1e-4,
        because: 'the next term is NA²/4',
      }),
    );
  });

  it('refuses an aperture that air cannot hold by name', () => {
    const wide = () => defocusAberrationOfDepth({ subjectDepth: 1, numericalAperture: 1, wavelength });
    expect(wide).toThrow(OutOfRange);
    expect(wide).toThrow(/numerical-aperture is 1/);
  });
});
