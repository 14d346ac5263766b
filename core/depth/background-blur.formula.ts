import { requireNotNegative, requirePositive } from '#core/quantity/errors.ts';
import type { Formula, Named } from '#core/quantity/formula.ts';

type Inputs = 'magnification' | 'entrance-pupil' | 'background-distance' | 'entrance-pupil-distance';

/**
 * How large a far point behind the subject is smeared out on the sensor. Exact.
 *
 * background blur = m D B / (u + B), towards m D far away
 *
 * @param given.magnification *m*, in the sharp plane, above 0
 * @param given.entrancePupil *D*, diameter, mm, above 0
 * @param given.backgroundDistance *B*, from the sharp plane away from the lens, mm, 0 or above
 * @param given.entrancePupilDistance *u*, entrance pupil to sharp plane, mm, above 0
 * @returns mm on the sensor, diameter; 0 in the sharp plane
 * @throws OutOfRange for anything not finite and above zero, but for a background distance of 0, which is fine
 *
 * Source: derived in [README](README.md#blur).
 *
 * @example backgroundBlur({ magnification: 0.5, entrancePupil: 20, backgroundDistance: 150, entrancePupilDistance: 150 }) // 5
 */
export function backgroundBlur(given: Named<Inputs>): number {
  const { magnification, entrancePupil, backgroundDistance, entrancePupilDistance } = given;
  requirePositive('magnification', magnification);
  requirePositive('entrance-pupil', entrancePupil);
  requireNotNegative('background-distance', backgroundDistance);
  requirePositive('entrance-pupil-distance', entrancePupilDistance);
  return (magnification * entrancePupil * backgroundDistance) / (entrancePupilDistance + backgroundDistance);
}

export const backgroundBlurFormula = {
  gives: 'background-blur',
  from: ['magnification', 'entrance-pupil', 'background-distance', 'entrance-pupil-distance'],
  tex: String.raw`\q{background-blur} = \frac{\q{magnification}\,\q{entrance-pupil}\,\q{background-distance}}{\q{entrance-pupil-distance} + \q{background-distance}}`,
  evaluate: backgroundBlur,
  says: 'A far background is blurred by the pupil’s width times the magnification; a longer lens has the wider pupil, so it blurs more.',
  source: 'derived in core/depth/README.md#blur',
  checkedBy: ['pupils-in-matrices', 'room-light-and-view'],
} as const satisfies Formula<Inputs>;
