import { OutOfRange, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'subject-depth' | 'numerical-aperture' | 'wavelength';

/**
 * The defocus, in waves, of both ends of a deep subject when its middle is in focus, however wide the cone.
 *
 * W₀₂₀ = Z (1 − √(1 − NA²))/(2 λ), with √(1 − NA²) the cosine of the half angle of the cone
 *
 * @param given.subjectDepth *Z*, nearest to farthest part, mm; 0 or above
 * @param given.numericalAperture *NA*, on the subject's side, a sine; above 0 and below 1
 * @param given.wavelength *λ*, in air, mm; above 0
 * @returns *W₀₂₀*, wavelengths at the rim of the pupil; 0 or above. A quarter wave is what a perfect lens hardly shows.
 * @throws OutOfRange for a depth below zero, an aperture outside 0 to 1, a wavelength not above zero, or anything not finite
 *
 * Assumes a lens that keeps the sine condition, in air, and a depth small beside the subject distance.
 * Source: Young, Zeng, Strack et al., Depth-of-focus in microscopy, SCIA 1993 (from memory): λ/(4 n (1 − √(1 − (NA/n)²))) for a
 * quarter wave on one side. Derived in [README](README.md#pupil).
 *
 * @example defocusAberrationOfDepth({ subjectDepth: 0.01, numericalAperture: 0.6, wavelength: 0.0005 }) // 2
 */
export function defocusAberrationOfDepth({ subjectDepth, numericalAperture, wavelength }: Named<Inputs>): number {
  requireNotNegative('subject-depth', subjectDepth);
  if (!(numericalAperture > 0 && numericalAperture < 1)) {
    throw new OutOfRange('numerical-aperture', numericalAperture, 'above 0 and below 1, in air');
  }
  requirePositive('wavelength', wavelength);
  const cosine = Math.sqrt((1 - numericalAperture) * (1 + numericalAperture));
  // 1 − cos θ without the digits that a slender cone would lose.
  return (subjectDepth * numericalAperture ** 2) / (1 + cosine) / (2 * wavelength);
}

export const defocusAberrationOfDepthFormula = {
  gives: 'defocus-aberration',
  from: ['subject-depth', 'numerical-aperture', 'wavelength'],
  tex: String.raw`\q{defocus-aberration} = \frac{\q{subject-depth}\left(1 - \sqrt{1 - \q{numerical-aperture}^2}\right)}{2\,\q{wavelength}}`,
  evaluate: defocusAberrationOfDepth,
  says: 'A wide cone gets its rim out of step within a few thousandths of a millimetre.',
  source: 'Young, Zeng, Strack et al., Depth-of-focus in microscopy, SCIA 1993 (from memory)',
  checkedBy: ['angles-tanks-and-lights', 'cones-tanks-and-queues'],
  // With a cone that is a thread the difference on the right of the TeX has no digits left.
  sample: { 'numerical-aperture': [0.01, 0.99] },
} as const satisfies Formula<Inputs>;
