import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';
import { firstDarkRing } from './airy-diameter.formula.ts';

type Inputs = 'magnification' | 'subject-depth' | 'wavelength';

/**
 * The effective f-number at which the ends of a deep subject blur as much by defocus as everything does by diffraction.
 *
 * N_w = m √(Z/(4 × 1.21966989… λ))
 *
 * @param given.magnification *m*, in the middle of the subject; above 0
 * @param given.subjectDepth *Z*, nearest to farthest part that should be sharp, mm; above 0
 * @param given.wavelength *λ*, of the light, mm; above 0
 * @returns *N_w*, of the cone that reaches the sensor. Not the marked number: that is smaller by 1 + m/P. Close to, not at, the
 *   best contrast: `bestFNumber` finds that for a given fineness of detail.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes focus in the middle of the depth, a depth small beside the subject distance, and no aberration.
 * Source: derived in [README](README.md#best): blur of the ends m² Z/(2 N_w) = Airy diameter.
 *
 * @example bestEffectiveFNumber({ magnification: 1, subjectDepth: 2, wavelength: 0.00055 }) // 27.3
 */
export function bestEffectiveFNumber({ magnification, subjectDepth, wavelength }: Named<Inputs>): number {
  requirePositive('magnification', magnification);
  requirePositive('subject-depth', subjectDepth);
  requirePositive('wavelength', wavelength);
  return magnification * Math.sqrt(subjectDepth / (4 * firstDarkRing * wavelength));
}

export const bestEffectiveFNumberFormula = {
  gives: 'effective-f-number',
  from: ['magnification', 'subject-depth', 'wavelength'],
  tex: String.raw`\q{effective-f-number} = \q{magnification}\sqrt{\frac{\q{subject-depth}}{4 \times 1.2196698913\,\q{wavelength}}}`,
  constant: { value: firstDarkRing, power: -1 / 2 },
  evaluate: bestEffectiveFNumber,
  says: 'Stop down until, at both ends of the subject, defocus blurs as much as diffraction; then stop.',
  source: 'derived in core/wave/README.md#best',
  checkedBy: ['best-f-number-table'],
} as const satisfies Formula<Inputs>;
