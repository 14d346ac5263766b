import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'source-size' | 'flash-distance';

/**
 * How wide a light looks from the subject: the larger the angle, the softer the light.
 *
 * α = 2 arctan(S_w/(2 d))
 *
 * @param given.sourceSize *S_w*, width of the light or of the diffuser before it, mm, above 0
 * @param given.flashDistance *d*, from that surface to the subject, mm, above 0
 * @returns *α*, rad, below π. Not S_w/d, which is 27 % too large for a light as wide as it is far.
 * @throws OutOfRange for anything not finite and above zero
 *
 * Assumes a flat source that faces the subject, evenly lit over its width.
 * Source: derived in [README](README.md#apparent-size).
 *
 * @example sourceAngle({ sourceSize: 200, flashDistance: 100 }) // 1.5707963...
 */
export function sourceAngle({ sourceSize, flashDistance }: Named<Inputs>): number {
  requirePositive('source-size', sourceSize);
  requirePositive('flash-distance', flashDistance);
  return 2 * Math.atan(sourceSize / (2 * flashDistance));
}

export const sourceAngleFormula = {
  gives: 'source-angle',
  from: ['source-size', 'flash-distance'],
  tex: String.raw`\q{source-angle} = 2\arctan\left(\frac{\q{source-size}}{2\,\q{flash-distance}}\right)`,
  evaluate: sourceAngle,
  says: 'A light is soft if it looks large from the subject: because it is wide, or because it is near.',
  source: 'derived in core/light/README.md#apparent-size',
  checkedBy: ['shadows-and-views'],
} as const satisfies Formula<Inputs>;
