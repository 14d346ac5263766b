import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'field-width' | 'entrance-pupil-distance' | 'background-distance';

/**
 * How much of the background the picture shows from side to side.
 *
 * background width = field width × (u + B) / u
 *
 * @param given.fieldWidth of the sharp plane, mm, above 0
 * @param given.entrancePupilDistance *u*, entrance pupil to sharp plane, mm, above 0
 * @param given.backgroundDistance *B*, from the sharp plane away from the lens, mm, 0 or above
 * @returns mm in the plane of the background
 * @throws OutOfRange for anything not finite and above zero, but for a background distance of 0, which is fine
 *
 * Source: similar triangles at the entrance pupil, derived in [README](README.md#blur).
 *
 * @example backgroundWidth({ fieldWidth: 36, entrancePupilDistance: 150, backgroundDistance: 300 }) // 108
 */
export function backgroundWidth({ fieldWidth, entrancePupilDistance, backgroundDistance }: Named<Inputs>): number {
  requirePositive('field-width', fieldWidth);
  requirePositive('entrance-pupil-distance', entrancePupilDistance);
  requireNotNegative('background-distance', backgroundDistance);
  return (fieldWidth * (entrancePupilDistance + backgroundDistance)) / entrancePupilDistance;
}

export const backgroundWidthFormula = {
  gives: 'background-width',
  from: ['field-width', 'entrance-pupil-distance', 'background-distance'],
  tex: String.raw`\q{background-width} = \q{field-width} \cdot \frac{\q{entrance-pupil-distance} + \q{background-distance}}{\q{entrance-pupil-distance}}`,
  evaluate: backgroundWidth,
  says: 'At the same magnification a longer lens stands farther off and shows less of the background.',
  source: 'derived in core/depth/README.md#blur',
  checkedBy: ['pupils-in-matrices', 'room-light-and-view'],
} as const satisfies Formula<Inputs>;
