import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'focal-length' | 'f-number' | 'circle-of-confusion';

/**
 * The subject distance from which on everything behind the subject is sharp, counted from H.
 *
 * hyperfocal distance = f²/(N c) + f
 *
 * @param given.focalLength *f*, mm, above 0
 * @param given.fNumber *N*, f over entrance pupil diameter, above 0
 * @param given.circleOfConfusion *c*, on the sensor, mm, above 0
 * @returns mm from H, whatever the pupils. Not from the sensor, and not half of it, where sharpness begins.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Source: Greenleaf, Photographic Optics (1950), pp. 25–27 (from memory). Derived in [README](README.md#hyperfocal).
 *
 * @example hyperfocalDistance({ focalLength: 50, fNumber: 10, circleOfConfusion: 0.025 }) // 10050
 */
export function hyperfocalDistance({ focalLength, fNumber, circleOfConfusion }: Named<Inputs>): number {
  requirePositive('focal-length', focalLength);
  requirePositive('f-number', fNumber);
  requirePositive('circle-of-confusion', circleOfConfusion);
  return focalLength ** 2 / (fNumber * circleOfConfusion) + focalLength;
}

export const hyperfocalDistanceFormula = {
  gives: 'hyperfocal-distance',
  from: ['focal-length', 'f-number', 'circle-of-confusion'],
  tex: String.raw`\q{hyperfocal-distance} = \frac{\q{focal-length}^2}{\q{f-number}\,\q{circle-of-confusion}} + \q{focal-length}`,
  evaluate: hyperfocalDistance,
  says: 'Focus here and everything from about half this distance to the horizon is sharp; close up you are far inside it.',
  source: 'Greenleaf, Photographic Optics (1950), pp. 25–27 (from memory)',
  checkedBy: ['common-practice', 'depth-from-hyperfocal', 'library-exif-composites'],
} as const satisfies Formula<Inputs>;
