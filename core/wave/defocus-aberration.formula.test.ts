import { describe, expect, it } from 'vitest';
import { OutOfRange } from '#core/quantity/errors.ts';
import { closeTo } from '#tests/support/close-to.ts';
import { defocusAberration } from './defocus-aberration.formula.ts';

const oneWave = { defocusBlur: 0.0352, wavelength: 0.00055, effectiveFNumber: 8 };

describe('defocusAberration', () => {
  it('is one wave for a blur of 35.2 µm in green light at an effective f/8', () => {
    expect(defocusAberration(oneWave)).toEqual(closeTo(1, { relative: 1e-15, because: 'rounding' }));
  });

  it('halves when the same blur comes from a cone half as wide', () => {
    expect(defocusAberration({ ...oneWave, effectiveFNumber: 16 })).toBe(defocusAberration(oneWave) / 2);
  });

  it('is exactly the difference of the two spheres’ depths, where the square of one cone’s f-number is not', () => {
    // A pupil of radius a focuses at R but the sensor stands at R + shift: to second order in a the sphere's depth is a²/(2R).
    const [a, R, shift] = [5, 80, 4];
    const between = (a * a) / (2 * R) - (a * a) / (2 * (R + shift));
    const blur = (2 * a * shift) / R;
    const atSensor = (R + shift) / (2 * a);
    const waves = defocusAberration({ defocusBlur: blur, wavelength: 0.00055, effectiveFNumber: atSensor });
    expect(waves).toEqual(closeTo(between / 0.00055, { relative: 1e-12, because: 'an identity: rounding' }));
    expect(Math.abs(shift / (8 * atSensor ** 2) / between - 1)).toBeGreaterThan(0.04);
  });

  it('is nothing in focus', () => {
    expect(defocusAberration({ ...oneWave, defocusBlur: 0 })).toBe(0);
  });

  it('refuses a blur below zero by name', () => {
    expect(() => defocusAberration({ ...oneWave, defocusBlur: -1 })).toThrow(OutOfRange);
    expect(() => defocusAberration({ ...oneWave, defocusBlur: -1 })).toThrow(/defocus-blur is -1/);
  });
});
