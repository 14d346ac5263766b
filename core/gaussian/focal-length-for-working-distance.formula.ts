import { OutOfRange, requireFinite, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'working-distance' | 'front-principal-depth' | 'magnification';

/**
 * The focal length that leaves a wanted room in front of the rim at a magnification.
 *
 * f = (w + h) / (1 + 1/m)
 *
 * @param given.workingDistance *w*, wanted from the front rim to the subject, mm, above 0
 * @param given.frontPrincipalDepth *h*, of the lens looked for, from its front rim back to H, mm, negative where H is in front of the rim
 * @param given.magnification *m*, image over subject size, above 0
 * @returns *f*, mm, in use at that magnification: an engraved one is longer where a lens focuses inside. A longer one leaves more room.
 * @throws OutOfRange for a room or a magnification not finite and above zero, and for an H so far before the rim that any lens would do
 *
 * Assumes Gaussian optics in air.
 * Source: the subject distance f (1 + 1/m) less h, solved for f. Derived in [README](README.md#distances).
 *
 * @example focalLengthForWorkingDistance({ workingDistance: 120, frontPrincipalDepth: 30, magnification: 0.5 }) // 50
 */
export function focalLengthForWorkingDistance(given: Named<Inputs>): number {
  const { workingDistance, frontPrincipalDepth, magnification } = given;
  requirePositive('working-distance', workingDistance);
  requireFinite('front-principal-depth', frontPrincipalDepth);
  requirePositive('magnification', magnification);
  const subjectDistance = workingDistance + frontPrincipalDepth;
  if (!(subjectDistance > 0)) {
    throw new OutOfRange(
      'front-principal-depth',
      frontPrincipalDepth,
      `above ${-workingDistance} mm: with H farther in front of the rim any focal length leaves that room`,
    );
  }
  return subjectDistance / (1 + 1 / magnification);
}

export const focalLengthForWorkingDistanceFormula = {
  gives: 'focal-length',
  from: ['working-distance', 'front-principal-depth', 'magnification'],
  tex: String.raw`\q{focal-length} = \frac{\q{working-distance} + \q{front-principal-depth}}{1 + \frac{1}{\q{magnification}}}`,
  evaluate: focalLengthForWorkingDistance,
  says: 'At the same magnification, room is bought with focal length; twice the magnification takes a longer lens for the same room.',
  source: 'subject distance less h, solved for f, derived in core/gaussian/README.md#distances',
  checkedBy: ['room-light-and-view'],
  // H stays behind the rim, or less far before it than the room that is wanted.
  sample: { 'working-distance': [250, 2000], 'front-principal-depth': [-200, 300] },
} as const satisfies Formula<Inputs>;
