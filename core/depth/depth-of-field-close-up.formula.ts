import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'circle-of-confusion' | 'effective-f-number' | 'magnification';

/**
 * The depth of field close up, where focal length no longer matters. For any chain of parts.
 *
 * T_c = 2 c N_w / m²
 *
 * @param given.circleOfConfusion *c*, on the sensor, mm, above 0
 * @param given.effectiveFNumber *N_w*, of the cone that reaches the sensor (not as marked), above 0
 * @param given.magnification *m*, in the sharp plane, above 0
 * @returns *T_c*, mm, half of it on each side. An approximation from below: the exact depth is 1/(1 − (c/(m D))²) times as
 *   much, 0.2 % more at m = 0.1 and 5 % at 0.02 (f/11, c = 0.02, f = 50), and infinite where this one never is.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a blur in the subject plane much smaller than the entrance pupil, and geometrical optics.
 * Source: limit of the exact depth, derived in [README](README.md#close-up).
 *
 * @example depthOfFieldCloseUp({ circleOfConfusion: 0.02, effectiveFNumber: 20, magnification: 1 }) // 0.8
 */
export function depthOfFieldCloseUp({ circleOfConfusion, effectiveFNumber, magnification }: Named<Inputs>): number {
  requirePositive('circle-of-confusion', circleOfConfusion);
  requirePositive('effective-f-number', effectiveFNumber);
  requirePositive('magnification', magnification);
  return (2 * circleOfConfusion * effectiveFNumber) / magnification ** 2;
}

export const depthOfFieldCloseUpFormula = {
  gives: 'depth-of-field-close-up',
  from: ['circle-of-confusion', 'effective-f-number', 'magnification'],
  tex: String.raw`\q{depth-of-field-close-up} = \frac{2\,\q{circle-of-confusion}\,\q{effective-f-number}}{\q{magnification}^2}`,
  evaluate: depthOfFieldCloseUp,
  says: 'Close up, magnification, effective f-number and the blur you allow decide the depth; the focal length does not matter.',
  source: 'limit of the exact depth, derived in core/depth/README.md#close-up',
  checkedBy: ['depth-with-pupils', 'microscope-depth', 'one-frame-and-its-light', 'pupils-in-matrices'],
} as const satisfies Formula<Inputs>;
