import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'circle-of-confusion' | 'wavelength' | 'magnification';

/**
 * The deepest subject that one frame holds sharp without losing the detail that a circle of confusion allows.
 *
 * Z = 2 c²/(λ m²)
 *
 * @param given.circleOfConfusion *c*, the largest blur still called sharp, mm on the sensor; above 0
 * @param given.wavelength *λ*, of the light, mm; above 0
 * @param given.magnification *m*, in the sharp plane; above 0
 * @returns mm along the axis, both sides of the sharp plane together. It asks for no lens: closed to the rule's N_w = c/λ all are alike.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes the close-up form of the depth of field, which is right to (c/(m D))².
 * Source: 2 N_w c/m² at N_w = c/λ. Derived in [README](README.md#one-frame).
 *
 * @example oneFrameDepth({ circleOfConfusion: 0.02, wavelength: 0.00055, magnification: 3 }) // 0.1616
 */
export function oneFrameDepth({ circleOfConfusion, wavelength, magnification }: Named<Inputs>): number {
  requirePositive('circle-of-confusion', circleOfConfusion);
  requirePositive('wavelength', wavelength);
  requirePositive('magnification', magnification);
  return (2 * circleOfConfusion ** 2) / (wavelength * magnification ** 2);
}

export const oneFrameDepthFormula = {
  gives: 'subject-depth',
  from: ['circle-of-confusion', 'wavelength', 'magnification'],
  tex: String.raw`\q{subject-depth} = \frac{2\,\q{circle-of-confusion}^2}{\q{wavelength}\,\q{magnification}^2}`,
  evaluate: oneFrameDepth,
  says: 'Twice the size on the sensor, a quarter of the depth: no lens and no f-number gets round that.',
  source: 'derived in core/wave/README.md#one-frame',
  checkedBy: ['frames-and-depths'],
} as const satisfies Formula<Inputs>;
