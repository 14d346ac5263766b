import { requireFinite, requirePositive } from '#core/quantity/errors.ts';
import type { Named } from '#core/quantity/formula.ts';

/**
 * The light of one subject point on its way through any chain of parts: all that depth, blur, perspective and stacks ask of a chain.
 *
 * `magnification` *m*, in the sharp plane, and `effectiveFNumber` *N_w*, both above 0. `inverseEntrancePupilDistance` *1/u*, from the entrance
 * pupil to the sharp plane, 1/mm: 0 where the pupil lies infinitely far away (telecentric), below 0 where it lies behind the subject.
 * A rig that is solved has these three, and can be given wherever a cone is asked for.
 */
export type Cone = Readonly<Named<'magnification' | 'effective-f-number' | 'inverse-entrance-pupil-distance'>>;

/** Throws OutOfRange unless *m* and *N_w* are above zero and *1/u* is finite. Returns the cone alone. */
export function requireCone({ magnification, effectiveFNumber, inverseEntrancePupilDistance }: Cone): Cone {
  return {
    magnification: requirePositive('magnification', magnification),
    effectiveFNumber: requirePositive('effective-f-number', effectiveFNumber),
    inverseEntrancePupilDistance: requireFinite('inverse-entrance-pupil-distance', inverseEntrancePupilDistance),
  };
}

/**
 * The cone of a chain whose entrance pupil is known: how wide it is, and how far in front of the subject.
 *
 * N_w = m u/D, 1/u
 *
 * @param given.magnification *m*, in the sharp plane, above 0
 * @param given.entrancePupil *D*, diameter, mm, above 0
 * @param given.entrancePupilDistance *u*, entrance pupil to sharp plane, mm, not 0; below 0 for a pupil behind the subject
 * @returns the cone; see {@link Cone}
 * @throws OutOfRange for what lies outside
 *
 * Source: similar triangles at the entrance pupil, m/(2 N_w) = D/(2u). Derived in [README](README.md#cone).
 *
 * @example coneOfPupil({ magnification: 1, entrancePupil: 5, entrancePupilDistance: 100 }).effectiveFNumber // 20
 */
export function coneOfPupil(
  given: Readonly<Named<'magnification' | 'entrance-pupil' | 'entrance-pupil-distance'>>,
): Cone {
  const { magnification, entrancePupil, entrancePupilDistance } = given;
  requirePositive('entrance-pupil', entrancePupil);
  requireFinite('entrance-pupil-distance', entrancePupilDistance);
  return requireCone({
    magnification,
    effectiveFNumber: Math.abs(requirePositive('magnification', magnification) * entrancePupilDistance) / entrancePupil,
    inverseEntrancePupilDistance: 1 / entrancePupilDistance,
  });
}

/**
 * The cone of a lens alone, the right way round.
 *
 * N_w = N (1 + m/P), 1/u = m P/(f (m + P))
 *
 * @param given.focalLength *f*, mm, above 0
 * @param given.fNumber *N*, f over entrance pupil diameter, above 0
 * @param given.pupilMagnification *P*, exit over entrance pupil diameter, above 0
 * @param given.magnification *m*, in the sharp plane, above 0
 * @returns the cone; see {@link Cone}
 * @throws OutOfRange for anything not finite and above zero
 *
 * Source: u = f (1/m + 1/P). Derived in [README](README.md#cone).
 *
 * @example coneOfLens({ focalLength: 50, fNumber: 10, pupilMagnification: 1, magnification: 1 }).inverseEntrancePupilDistance // 0.01
 */
export function coneOfLens(
  given: Readonly<Named<'focal-length' | 'f-number' | 'pupil-magnification' | 'magnification'>>,
): Cone {
  const f = requirePositive('focal-length', given.focalLength);
  const N = requirePositive('f-number', given.fNumber);
  const P = requirePositive('pupil-magnification', given.pupilMagnification);
  const m = requirePositive('magnification', given.magnification);
  return {
    magnification: m,
    effectiveFNumber: N * (1 + m / P),
    inverseEntrancePupilDistance: (m * P) / (f * (m + P)),
  };
}
