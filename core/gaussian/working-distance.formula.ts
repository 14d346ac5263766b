import { requireFinite, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'subject-distance' | 'front-principal-depth';

/**
 * The free space between the front rim of the lens and the subject.
 *
 * w = s − h
 *
 * @param given.subjectDistance *s*, from H, mm, above 0
 * @param given.frontPrincipalDepth *h*, from the front rim back to H, mm, negative where H lies in front of the rim
 * @returns *w*, mm. Zero or negative is an answer: the sharp plane touches the rim or lies behind it, inside the lens
 *   or inside a deep rim. A hood, filter or flash in front of the rim takes its own length away from it.
 * @throws OutOfRange for a subject distance not finite and above zero, or a depth that is not finite
 *
 * Source: definition of the working distance; see [README](README.md#distances).
 *
 * @example workingDistance({ subjectDistance: 150, frontPrincipalDepth: 30 }) // 120
 */
export function workingDistance({ subjectDistance, frontPrincipalDepth }: Named<Inputs>): number {
  requirePositive('subject-distance', subjectDistance);
  requireFinite('front-principal-depth', frontPrincipalDepth);
  return subjectDistance - frontPrincipalDepth;
}

export const workingDistanceFormula = {
  gives: 'working-distance',
  from: ['subject-distance', 'front-principal-depth'],
  tex: String.raw`\q{working-distance} = \q{subject-distance} - \q{front-principal-depth}`,
  evaluate: workingDistance,
  says: 'Whatever of the lens stands in front of H takes away from the room for you and your light.',
  source: 'definition of the working distance',
  checkedBy: ['pupils-in-matrices'],
} as const satisfies Formula<Inputs>;
