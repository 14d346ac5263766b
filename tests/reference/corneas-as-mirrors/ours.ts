import { ballRadiusFromCatchlight } from '#core/light/ball-radius-from-catchlight.formula.ts';
import { catchlightWidthParaxial } from '#core/light/catchlight-width-paraxial.formula.ts';
import { convexMirrorImage } from '#core/light/convex-mirror.ts';
import { oursById } from '#tests/support/reference-case.ts';

interface Mirrored {
  readonly sourceSize: number;
  readonly flashDistance: number;
  readonly reflection: number;
}

/** The radius that such a reflection speaks of, and how deep it lies; the radius gives the reflection again. */
const cornea = ({ sourceSize, flashDistance, reflection }: Mirrored) => {
  const ballRadius = ballRadiusFromCatchlight({ sourceSize, flashDistance, catchlightWidthParaxial: reflection });
  const again = catchlightWidthParaxial({ sourceSize, flashDistance, ballRadius });
  if (Math.abs(again - reflection) > 1e-9) throw new Error(`not the reflection of ${reflection} mm`);
  return { ballRadius, imageDepth: convexMirrorImage({ subjectDistance: flashDistance, ballRadius }).depth };
};

export const ours = oursById({ 'openstax-cornea': cornea, 'course-cornea': cornea, 'tutor-cornea': cornea });
