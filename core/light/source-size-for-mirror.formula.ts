import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'field-width' | 'flash-distance' | 'entrance-pupil-distance' | 'entrance-pupil';

/**
 * How wide a light must be for a flat mirror, a soap film among them, to shine all over the field.
 *
 * S_w = W (1 + d/u) + D d/u
 *
 * @param given.fieldWidth *W*, of the subject in the picture, measured in the sharp plane, mm, above 0
 * @param given.flashDistance *d*, from the mirror to the light along the mirrored axis, mm, 0 or above
 * @param given.entrancePupilDistance *u*, entrance pupil to sharp plane, mm, above 0
 * @param given.entrancePupil *D*, diameter of the entrance pupil, mm, 0 or above; 0 for an eye that is a point
 * @returns *S_w*, mm, of a light square to the mirrored axis and centred on it; at least *W*. A smaller one leaves the mirror dark towards the sides.
 * @throws OutOfRange for a field or a distance to the pupil not finite and above zero, and for a light or a pupil below zero
 *
 * Assumes a flat mirror, at whatever angle, that the axis meets in the sharp plane. Not counted: a light so placed that it hides the mirror from the lens.
 * Source: similar triangles in the mirror's image. Derived in [README](README.md#a-flat-mirror).
 *
 * @example sourceSizeForMirror({ fieldWidth: 60, flashDistance: 100, entrancePupilDistance: 200, entrancePupil: 10 }) // 95
 */
export function sourceSizeForMirror({
  fieldWidth,
  flashDistance,
  entrancePupilDistance,
  entrancePupil,
}: Named<Inputs>): number {
  requirePositive('field-width', fieldWidth);
  requireNotNegative('flash-distance', flashDistance);
  requirePositive('entrance-pupil-distance', entrancePupilDistance);
  requireNotNegative('entrance-pupil', entrancePupil);
  return fieldWidth + ((fieldWidth + entrancePupil) * flashDistance) / entrancePupilDistance;
}

export const sourceSizeForMirrorFormula = {
  gives: 'source-size',
  from: ['field-width', 'flash-distance', 'entrance-pupil-distance', 'entrance-pupil'],
  tex: String.raw`\q{source-size} = \q{field-width}\left(1 + \frac{\q{flash-distance}}{\q{entrance-pupil-distance}}\right) + \frac{\q{entrance-pupil}\,\q{flash-distance}}{\q{entrance-pupil-distance}}`,
  evaluate: sourceSizeForMirror,
  says: 'To fill a mirror a light must be wider than what is seen of the mirror, the more so the farther off it is.',
  source: 'derived in core/light/README.md#a-flat-mirror',
  checkedBy: ['looking-glasses', 'mirrored-fields'],
} as const satisfies Formula<Inputs>;
