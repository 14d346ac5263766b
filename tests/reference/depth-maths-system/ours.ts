import { coneOfLens } from '#core/depth/cone.ts';
import { limitsOfCone } from '#core/depth/limits-of-cone.ts';
import { magnificationOfSubject } from '#core/gaussian/magnification-of-subject.formula.ts';
import { sharpFromLens, type FocusedLens } from '#tests/support/depth-from-lens.ts';

/** The same limits twice: from the pupil's width and place, and from m, N_w and 1/u. */
export function ours(lens: FocusedLens) {
  const cone = coneOfLens({ ...lens, pupilMagnification: 1, magnification: magnificationOfSubject(lens) });
  const { nearLimit, farLimit } = limitsOfCone(cone, lens.circleOfConfusion);
  return {
    ...sharpFromLens(lens),
    nearByCone: lens.subjectDistance - nearLimit,
    farByCone: lens.subjectDistance + farLimit,
  };
}
