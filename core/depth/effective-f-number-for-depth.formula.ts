import { OutOfRange, requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'magnification' | 'subject-depth' | 'circle-of-confusion' | 'wavelength';

/**
 * The least effective f-number that holds a subject’s depth, defocus and diffraction together, in the form for close-ups.
 *
 * N_w = m² Z/√(2 c² + 2 √(c⁴ − λ² m⁴ Z²)), the smaller root of (B/N_w)² + (λ N_w)² = c² with B = m² Z/2
 *
 * @param given.magnification *m*, in the sharp plane; above 0
 * @param given.subjectDepth *Z*, nearest to farthest part, mm; 0 or above
 * @param given.circleOfConfusion *c*, the largest blur on the sensor, mm; above 0
 * @param given.wavelength *λ*, mm; above 0
 * @returns *N_w*; 0 for a subject without depth. Closed farther, up to the larger root, it is sharp as well.
 * @throws OutOfRange for a depth that no opening holds: more than c²/(λ m²); for what must be above zero and is not, or anything not finite
 *
 * Assumes a depth small beside the distance to the entrance pupil, focused so that both ends are blurred alike; that the two blurs add as the
 * root of squares, diffraction as λ N_w, the width of the Airy pattern at half its height. A rule, not a law.
 * Source: derived in [README](README.md#one-frame).
 *
 * @example effectiveFNumberForDepth({ magnification: 1, subjectDepth: 0.8, circleOfConfusion: 0.025, wavelength: 0.0005 }) // 17.015...
 */
export function effectiveFNumberForDepth({
  magnification,
  subjectDepth,
  circleOfConfusion,
  wavelength,
}: Named<Inputs>): number {
  requirePositive('magnification', magnification);
  requireNotNegative('subject-depth', subjectDepth);
  requirePositive('circle-of-confusion', circleOfConfusion);
  requirePositive('wavelength', wavelength);
  const blur = (magnification ** 2 * subjectDepth) / 2;
  const square = circleOfConfusion ** 2;
  const spare = square ** 2 - 4 * wavelength ** 2 * blur ** 2;
  // What misses by rounding alone meets the limit.
  if (spare < -1e-12 * square ** 2) {
    throw new OutOfRange('subject-depth', subjectDepth, 'no more than c²/(λ m²), the most that one frame holds');
  }
  return blur * Math.sqrt(2 / (square + Math.sqrt(Math.max(0, spare))));
}

export const effectiveFNumberForDepthFormula = {
  gives: 'effective-f-number',
  from: ['magnification', 'subject-depth', 'circle-of-confusion', 'wavelength'],
  tex: String.raw`\q{effective-f-number} = \frac{\q{magnification}^2\,\q{subject-depth}}{\sqrt{2\,\q{circle-of-confusion}^2 + 2\sqrt{\q{circle-of-confusion}^4 - \q{wavelength}^2\,\q{magnification}^4\,\q{subject-depth}^2}}}`,
  evaluate: effectiveFNumberForDepth,
  says: 'How far the depth makes you stop down, whatever the lens.',
  source: 'derived in core/depth/README.md#one-frame',
  checkedBy: ['one-frame-and-its-light'],
  // Deeper subjects want a stack.
  sample: {
    magnification: [0.02, 2],
    'subject-depth': [0.001, 0.04],
    'circle-of-confusion': [0.012, 0.2],
  },
} as const satisfies Formula<Inputs>;
