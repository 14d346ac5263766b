import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'circle-of-confusion' | 'wavelength';

/**
 * As far as a lens is closed for any depth: there one frame holds the deepest subject, and defocus and diffraction blur its ends alike.
 *
 * N_w = c/(√2 λ)
 *
 * @param given.circleOfConfusion *c*, the largest blur still called sharp, mm on the sensor; above 0
 * @param given.wavelength *λ*, of the light, mm; above 0
 * @returns *N_w*, effective, where b = λ N_w = c/√2. Closed a stop further, to c/λ, diffraction alone blurs as wide as *c*.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes what `effectiveFNumberForDepth` does: that the two blurs add as the root of squares. A rule, not a law: contrast at 1/(2c) is 56 % in
 * the sharp plane, and falls slowly.
 * Source: derived in [README](README.md#one-frame), as the N_w of `subjectDepthInOneFrame`.
 *
 * @example finestEffectiveFNumber({ circleOfConfusion: 0.02, wavelength: 0.00055 }) // 25.71
 */
export function finestEffectiveFNumber({ circleOfConfusion, wavelength }: Named<Inputs>): number {
  requirePositive('circle-of-confusion', circleOfConfusion);
  requirePositive('wavelength', wavelength);
  return circleOfConfusion / (Math.SQRT2 * wavelength);
}

export const finestEffectiveFNumberFormula = {
  gives: 'effective-f-number',
  from: ['circle-of-confusion', 'wavelength'],
  tex: String.raw`\q{effective-f-number} = \frac{\q{circle-of-confusion}}{\sqrt{2}\,\q{wavelength}}`,
  evaluate: finestEffectiveFNumber,
  says: 'One frame holds most here. Closed further, diffraction takes more than defocus gives.',
  source: 'derived in core/wave/README.md#one-frame',
  checkedBy: ['frames-and-depths'],
} as const satisfies Formula<Inputs>;
