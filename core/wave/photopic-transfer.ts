import { requireNotNegative } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';
import { transferAt } from './optical-transfer.ts';
import { inLight, photopicLight } from './photopic-light.ts';
import { requirePupil, type Pupil } from './pupil.ts';
import { requireCone } from './require.ts';

/**
 * The optical transfer function in white light: `opticalTransfer` averaged over the visible by V(λ).
 *
 * @param given.spatialFrequency *ν*, line pairs per millimetre on the sensor; 0 or above
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor; 0.5 or above
 * @param given.defocusAberration *W₀₂₀*, wavelengths of 555 nm; at most 200 either way
 * @param given.sphericalAberration *W₀₄₀*, wavelengths of 555 nm; at most 20 either way
 * @returns a real number, below zero where light and dark have changed places; within 1e-4
 * @throws OutOfRange for a quantity outside its range
 *
 * Assumes an equal-energy source and a lens without colour error: every wavelength has the same path difference. See [README](README.md#white-light).
 *
 * @example photopicTransfer({ spatialFrequency: 50, effectiveFNumber: 16, defocusAberration: 0, sphericalAberration: 0 }) // 0.449487
 */
export function photopicTransfer(given: Pupil & Named<'spatial-frequency' | 'effective-f-number'>): number {
  const pupil = requirePupil(given);
  const frequency = requireNotNegative('spatial-frequency', given.spatialFrequency);
  const fNumber = requireCone(given.effectiveFNumber);
  return photopicLight.reduce(
    (sum, { wavelength, share }) =>
      sum + share * transferAt(inLight(pupil, wavelength), frequency * wavelength * fNumber),
    0,
  );
}
