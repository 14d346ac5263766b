import { requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'rim-diameter' | 'working-distance';

/**
 * How much of an even sky's light the front rim of a lens takes from a flat subject that faces it.
 *
 * lens shadow = (⌀/2)² / ((⌀/2)² + w²)
 *
 * @param given.rimDiameter *⌀*, outside, of what is foremost, mm, above 0
 * @param given.workingDistance *w*, from the rim to the subject, mm, above 0
 * @returns a share from 0 to 1 of the light that falls on the subject's middle without the lens: 1/2 where the rim is its own radius away
 * @throws OutOfRange for anything not finite and above zero: at w = 0 the rim lies on the subject
 *
 * Assumes a sky of the same brightness in all directions, a subject square to the axis, and a black lens with nothing of it seen beside its rim.
 * Source: the configuration factor of a disc on the axis of a small surface, derived in [README](README.md#disc).
 *
 * @example lensShadow({ rimDiameter: 60, workingDistance: 30 }) // 0.5
 */
export function lensShadow({ rimDiameter, workingDistance }: Named<Inputs>): number {
  requirePositive('rim-diameter', rimDiameter);
  requirePositive('working-distance', workingDistance);
  return 1 / (1 + ((2 * workingDistance) / rimDiameter) ** 2);
}

export const lensShadowFormula = {
  gives: 'lens-shadow',
  from: ['rim-diameter', 'working-distance'],
  tex: String.raw`\q{lens-shadow} = \frac{\left(\frac{\q{rim-diameter}}{2}\right)^2}{\left(\frac{\q{rim-diameter}}{2}\right)^2 + \q{working-distance}^2}`,
  evaluate: lensShadow,
  says: 'One rim radius away the lens hides half of an even sky’s light; five radii away, a twenty-sixth.',
  source: 'configuration factor of a disc, derived in core/light/README.md#disc',
  checkedBy: ['room-light-and-view'],
  // A rim on the subject, or behind it, is refused.
  sample: { 'working-distance': [1, 2000] },
} as const satisfies Formula<Inputs>;
