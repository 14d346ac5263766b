import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'flash-distance' | 'background-distance';

/**
 * By how many stops a flash lights the background less than the subject.
 *
 * background underexposure = 2 log2((d + B) / d)
 *
 * @param given.flashDistance *d*, flash head to subject, mm; above 0
 * @param given.backgroundDistance *B*, subject to background, mm; 0 or above
 * @returns stops, 0 or above. It knows nothing of how light or dark either is.
 * @throws OutOfRange for anything not finite, a flash distance of zero or below and a background before the subject
 *
 * Assumes a flash that is small against its distance and shines past the subject straight on to the background.
 * Source: illuminance goes as 1 over the square of the distance. Derived in [README](README.md#flash).
 *
 * @example backgroundUnderexposure({ flashDistance: 150, backgroundDistance: 450 }) // 4
 */
export function backgroundUnderexposure({ flashDistance, backgroundDistance }: Named<Inputs>): number {
  requirePositive('flash-distance', flashDistance);
  requireNotNegative('background-distance', backgroundDistance);
  return 2 * Math.log2((flashDistance + backgroundDistance) / flashDistance);
}

export const backgroundUnderexposureFormula = {
  gives: 'background-underexposure',
  from: ['flash-distance', 'background-distance'],
  tex: String.raw`\q{background-underexposure} = 2\log_2\frac{\q{flash-distance} + \q{background-distance}}{\q{flash-distance}}`,
  evaluate: backgroundUnderexposure,
  says: 'Twice as far from the flash is two stops darker: a near flash has a black background.',
  source: 'inverse square law, core/exposure/README.md#flash',
  checkedBy: ['flash-by-other-routes', 'flash-in-stops'],
} as const satisfies Formula<Inputs>;
