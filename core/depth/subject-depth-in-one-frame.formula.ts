import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'circle-of-confusion' | 'wavelength' | 'magnification';

/**
 * The deepest subject that one frame can hold, whatever the lens and however far it is closed.
 *
 * Z = c² / (λ m²)
 *
 * @param given.circleOfConfusion *c*, the largest blur on the sensor, mm; above 0
 * @param given.wavelength *λ*, mm; above 0
 * @param given.magnification *m*, in the sharp plane; above 0
 * @returns *Z*, nearest to farthest part, mm; reached at N_w = c/(√2 λ), where defocus and diffraction blur alike
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes what `effectiveFNumberForDepth` does: that the two blurs add as the root of squares. A rule, not a law.
 * Source: derived in [README](README.md#one-frame).
 *
 * @example subjectDepthInOneFrame({ circleOfConfusion: 0.02, wavelength: 0.0005, magnification: 0.5 }) // 3.2
 */
export function subjectDepthInOneFrame({ circleOfConfusion, wavelength, magnification }: Named<Inputs>): number {
  requirePositive('circle-of-confusion', circleOfConfusion);
  requirePositive('wavelength', wavelength);
  requirePositive('magnification', magnification);
  return circleOfConfusion ** 2 / (wavelength * magnification ** 2);
}

export const subjectDepthInOneFrameFormula = {
  gives: 'subject-depth',
  from: ['circle-of-confusion', 'wavelength', 'magnification'],
  tex: String.raw`\q{subject-depth} = \frac{\q{circle-of-confusion}^2}{\q{wavelength}\,\q{magnification}^2}`,
  evaluate: subjectDepthInOneFrame,
  says: 'No lens is in it: what is deeper wants a stack, or a smaller picture.',
  source: 'derived in core/depth/README.md#one-frame',
  checkedBy: ['one-frame-and-its-light', 'frames-and-depths'],
} as const satisfies Formula<Inputs>;
