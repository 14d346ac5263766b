import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'circle-of-confusion' | 'wavelength';

/**
 * As far as a lens is closed without losing the detail that a circle of confusion allows: this workbook's rule.
 *
 * N_w = c/λ
 *
 * @param given.circleOfConfusion *c*, the largest blur still called sharp, mm on the sensor; above 0
 * @param given.wavelength *λ*, of the light, mm; above 0
 * @returns *N_w*, effective; its cutoff frequency is 1/c, and the Airy disc 2.44 *c* wide
 * @throws OutOfRange for anything not finite and above zero
 *
 * A rule and no edge: contrast at 1/(2c), half the cutoff frequency there, is 39 %, and falls slowly on both sides.
 * Source: cutoff 1/(λ N_w) twice the frequency 1/(2c) that *c* stands for. Derived in [README](README.md#one-frame).
 *
 * @example finestEffectiveFNumber({ circleOfConfusion: 0.02, wavelength: 0.00055 }) // 36.36
 */
export function finestEffectiveFNumber({ circleOfConfusion, wavelength }: Named<Inputs>): number {
  requirePositive('circle-of-confusion', circleOfConfusion);
  requirePositive('wavelength', wavelength);
  return circleOfConfusion / wavelength;
}

export const finestEffectiveFNumberFormula = {
  gives: 'effective-f-number',
  from: ['circle-of-confusion', 'wavelength'],
  tex: String.raw`\q{effective-f-number} = \frac{\q{circle-of-confusion}}{\q{wavelength}}`,
  evaluate: finestEffectiveFNumber,
  says: 'Finer detail wants a wider cone: close no further than this and the detail stays.',
  source: 'derived in core/wave/README.md#one-frame',
  checkedBy: ['frames-and-depths'],
} as const satisfies Formula<Inputs>;
