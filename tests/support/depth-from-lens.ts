import { farLimit } from '#core/depth/far-limit.formula.ts';
import { nearLimit } from '#core/depth/near-limit.formula.ts';
import { entrancePupilDistance } from '#core/gaussian/entrance-pupil-distance.formula.ts';
import { entrancePupil } from '#core/gaussian/entrance-pupil.formula.ts';
import { magnificationOfSubject } from '#core/gaussian/magnification-of-subject.formula.ts';

/** A lens focused at a distance, as books on depth of field describe it. */
export interface FocusedLens {
  focalLength: number;
  fNumber: number;
  circleOfConfusion: number;
  /** From the lens, that is from H. */
  subjectDistance: number;
}

/**
 * The nearest and the farthest sharp distance as books give them: from the lens, not from the sharp plane as the core does.
 * Such books know only symmetric lenses, whose pupils lie in the principal planes.
 */
export function sharpFromLens(lens: FocusedLens): { near: number; far: number } {
  const magnification = magnificationOfSubject(lens);
  const seen = {
    circleOfConfusion: lens.circleOfConfusion,
    magnification,
    entrancePupil: entrancePupil(lens),
    entrancePupilDistance: entrancePupilDistance({
      focalLength: lens.focalLength,
      magnification,
      pupilMagnification: 1,
    }),
  };
  return { near: lens.subjectDistance - nearLimit(seen), far: lens.subjectDistance + farLimit(seen) };
}
