import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'source-size' | 'ball-radius' | 'flash-distance';

/**
 * The width of a light's reflection in a shiny ball, by the mirror equation: the short form.
 *
 * width = S_w r/(2 d + r)
 *
 * @param given.sourceSize *S_w*, width of the light, mm, above 0
 * @param given.ballRadius *r*, of the ball or eye, mm, above 0
 * @param given.flashDistance *d*, from the ball's nearest point to the light, mm, above 0
 * @returns mm, of the virtual image behind the ball's surface. Too large for a light that is wide and near: for a small ball by 1 %
 *   where the light looks 19° wide, 12 % at 60° and 31 % at 90°; `catchlightWidth` is exact.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes rays close to the axis, a light centred on it and facing the ball, and a camera far away on it.
 * Source: OpenStax, University Physics Vol. 3, section 2.2 (mirror equation, convex mirror). Derived in
 * [README](README.md#convex-mirror).
 *
 * @example catchlightWidthParaxial({ sourceSize: 100, ballRadius: 4, flashDistance: 98 }) // 2
 */
export function catchlightWidthParaxial({ sourceSize, ballRadius, flashDistance }: Named<Inputs>): number {
  requirePositive('source-size', sourceSize);
  requirePositive('ball-radius', ballRadius);
  requirePositive('flash-distance', flashDistance);
  return (sourceSize * ballRadius) / (2 * flashDistance + ballRadius);
}

export const catchlightWidthParaxialFormula = {
  gives: 'catchlight-width-paraxial',
  from: ['source-size', 'ball-radius', 'flash-distance'],
  tex: String.raw`\q{catchlight-width-paraxial} = \frac{\q{source-size}\,\q{ball-radius}}{2\,\q{flash-distance} + \q{ball-radius}}`,
  evaluate: catchlightWidthParaxial,
  says: 'An eye is a tiny convex mirror: the light’s picture in it shrinks as the light moves away.',
  source: 'OpenStax, University Physics Vol. 3, section 2.2',
  checkedBy: ['convex-mirror', 'corneas-as-mirrors'],
} as const satisfies Formula<Inputs>;
