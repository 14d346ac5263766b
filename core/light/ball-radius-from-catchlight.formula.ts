import { OutOfRange, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'source-size' | 'flash-distance' | 'catchlight-width-paraxial';

/**
 * The radius of a shiny ball, measured from the reflection of a light of known width: what an optician does to a cornea.
 *
 * r = 2 d b/(S_w − b), with b the width of the reflection
 *
 * @param given.sourceSize *S_w*, width of the light, mm, above 0
 * @param given.flashDistance *d*, from the ball's nearest point to the light, mm, above 0
 * @param given.catchlightWidthParaxial *b*, of the reflection, mm on the subject and not on the sensor, above 0 and below *S_w*
 * @returns *r*, mm. Too small where the light looks wide from the ball: the short form of the catchlight is turned round here.
 * @throws OutOfRange for anything not finite and above zero, and for a reflection as wide as the light, which a flat mirror shows
 *
 * Assumes rays close to the axis and a camera far away on it.
 * Source: OpenStax, University Physics Vol. 3, example 2.2 (keratometer). Derived in [README](README.md#convex-mirror).
 *
 * @example ballRadiusFromCatchlight({ sourceSize: 100, flashDistance: 98, catchlightWidthParaxial: 2 }) // 4
 */
export function ballRadiusFromCatchlight({
  sourceSize,
  flashDistance,
  catchlightWidthParaxial,
}: Named<Inputs>): number {
  requirePositive('source-size', sourceSize);
  requirePositive('flash-distance', flashDistance);
  requirePositive('catchlight-width-paraxial', catchlightWidthParaxial);
  if (catchlightWidthParaxial >= sourceSize) {
    throw new OutOfRange('catchlight-width-paraxial', catchlightWidthParaxial, 'less than the width of the light');
  }
  return (2 * flashDistance * catchlightWidthParaxial) / (sourceSize - catchlightWidthParaxial);
}

export const ballRadiusFromCatchlightFormula = {
  gives: 'ball-radius',
  from: ['source-size', 'flash-distance', 'catchlight-width-paraxial'],
  tex: String.raw`\q{ball-radius} = \frac{2\,\q{flash-distance}\,\q{catchlight-width-paraxial}}{\q{source-size} - \q{catchlight-width-paraxial}}`,
  evaluate: ballRadiusFromCatchlight,
  says: 'The smaller the reflection, the more strongly curved the ball.',
  source: 'OpenStax, University Physics Vol. 3, example 2.2',
  checkedBy: ['convex-mirror', 'corneas-as-mirrors'],
  // A ball shows a light smaller than it is.
  sample: { 'source-size': [10, 5000], 'catchlight-width-paraxial': [0.01, 9] },
} as const satisfies Formula<Inputs>;
